import {
  assumed,
  type CableKind,
  type ConductorMaterial,
  type Evidence,
  type Fact,
  fact,
  type Grouping,
  type Insulation,
  isExact,
  isKnown,
  isKnownFact,
  type Reckoner,
  type ReferenceMethod,
  TERM,
} from "@good-grounds/core";
import { MATTER } from "@good-grounds/inspection";
import {
  ambientFactor,
  groundFactor,
  groupingFactor,
  notTabulated,
  tabulatedCapacity,
  thermalInsulationFactor,
} from "@good-grounds/tables";

/** What the capacity of a cable as installed is found from. */
export interface Installed {
  readonly kind: Fact<CableKind>;
  readonly insulation: Fact<Insulation>;
  readonly material: Fact<ConductorMaterial>;
  readonly line: Evidence<"square-millimetre">;
  readonly phases: Fact<"1" | "3">;
  readonly methods: readonly Fact<ReferenceMethod>[];
  readonly ambient: Evidence<"celsius">;
  readonly grouping: Fact<Grouping>;
  readonly groupedCircuits: Evidence<"ratio">;
  readonly surrounded: Evidence<"metre">;
  /** Whether what the cable ends in is made for conductors at 90 °C. */
  readonly hotTerminals: Fact<boolean>;
}

/** It·Ca·Cg·Ci, A, for every method the route may have and at every temperature its terminals may stand. */
export function installedCapacity(given: Installed, reckon: Reckoner): Evidence<"ampere"> {
  const each = given.methods.flatMap((method) =>
    atTemperatures(given).map((insulation) => byMethod({ ...given, insulation }, method, reckon)),
  );
  const [only] = each;
  if (each.length === 1 && only !== undefined) return only;
  if (each.length === 0) return reckon.lookedUp(TERM.cableCapacity, undefined, UNRECORDED_METHOD);
  return reckon.oneOf(TERM.cableCapacity, each);
}

/** A conductor that may reach 90 °C is not to be hotter than what it ends in; where that is not known, both are taken. */
function atTemperatures({ insulation, hotTerminals }: Installed): readonly Fact<Insulation>[] {
  if (!isHot(insulation)) return [insulation];
  if (isKnownFact(hotTerminals)) return [hotTerminals.word ? insulation : AS_70];
  return [AS_70, insulation];
}

/** Whether the insulation is made for conductors hotter than terminals are unless they are marked for it. */
export function isHot(insulation: Fact<Insulation>): boolean {
  return (
    isKnownFact(insulation) && (insulation.word === "90C-thermoplastic" || insulation.word === "90C-thermosetting")
  );
}

function byMethod(given: Installed, method: Fact<ReferenceMethod>, reckon: Reckoner): Evidence<"ampere"> {
  const it = tabulated(given, method, reckon);
  const warm = reckon.product(TERM.cableCapacity, it, surroundingsOf(given, method, reckon));
  const grouped = reckon.product(TERM.cableCapacity, warm, groupingOf(given, method, reckon));
  return isKnown(given.surrounded) ? reckon.product(TERM.cableCapacity, grouped, insulationOf(given, reckon)) : grouped;
}

function tabulated(given: Installed, method: Fact<ReferenceMethod>, reckon: Reckoner): Evidence<"ampere"> {
  const { kind, insulation, material, line, phases } = given;
  const figure =
    isKnownFact(kind) &&
    isKnownFact(insulation) &&
    isKnownFact(material) &&
    isKnownFact(phases) &&
    isKnownFact(method) &&
    isExact(line)
      ? tabulatedCapacity({
          kind: kind.word,
          insulation: insulation.word,
          material: material.word,
          method: method.word,
          area: line.value,
          loadedConductors: phases.word === "3" ? 3 : 2,
        })
      : undefined;
  return reckon.lookedUp(TERM.tabulatedCapacity, figure, method, kind, insulation, material, line, phases);
}

const isInGround = (method: Fact<ReferenceMethod>) => isKnownFact(method) && method.word === "D";

/** Air at 30 °C is what the tables hold for, in the ground 20 °C. */
function surroundingsOf(
  { ambient, insulation }: Installed,
  method: Fact<ReferenceMethod>,
  reckon: Reckoner,
): Evidence<"ratio"> {
  const inGround = isInGround(method);
  if (!isKnown(ambient)) return inGround ? AT_20 : AT_30;
  const factor = inGround ? groundFactor : ambientFactor;
  const figure = isKnownFact(insulation) ? factor(insulation.word, ambient.high) : undefined;
  return reckon.lookedUp(TERM.ambientFactor, figure, ambient, insulation, method);
}

function groupingOf(
  { grouping, groupedCircuits }: Installed,
  method: Fact<ReferenceMethod>,
  reckon: Reckoner,
): Evidence<"ratio"> {
  if (!isKnown(groupedCircuits)) return ALONE;
  if (isInGround(method) && !(groupedCircuits.high <= 1))
    return reckon.lookedUp(TERM.groupingFactor, NO_GROUPS_IN_GROUND, method, groupedCircuits);
  const figure =
    isKnownFact(grouping) && isExact(groupedCircuits)
      ? groupingFactor(grouping.word, groupedCircuits.value)
      : undefined;
  return reckon.lookedUp(TERM.groupingFactor, figure, grouping, groupedCircuits);
}

function insulationOf({ surrounded }: Installed, reckon: Reckoner): Evidence<"ratio"> {
  const figure = isKnown(surrounded) ? thermalInsulationFactor(surrounded.high * 1000) : undefined;
  return reckon.lookedUp(TERM.insulationFactor, figure, surrounded);
}

const AS_70 = fact(
  MATTER.insulation,
  "70C-thermoplastic",
  [],
  "as a 70 °C cable, for terminals that are not made for hotter conductors",
  "assumed",
);
const NO_GROUPS_IN_GROUND = notTabulated(TERM.groupingFactor, "Table 4C1", "cables in the ground (Tables 4C2, 4C3)");
const AT_30 = assumed(
  TERM.ambientFactor,
  1,
  "ambient temperature along the route not recorded; the table's 30 °C is taken",
);
const AT_20 = assumed(TERM.ambientFactor, 1, "temperature of the ground not recorded; the table's 20 °C is taken");
const ALONE = assumed(TERM.groupingFactor, 1, "no grouping recorded; the circuit is taken to run by itself");
const UNRECORDED_METHOD = Object.freeze({
  kind: "fact-not-known",
  matter: MATTER.method,
  detail: Object.freeze({ path: Object.freeze(["cable", "methods"]), silence: "absent", reason: "" }),
} as const);
