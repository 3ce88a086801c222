import {
  assumed,
  CABLE_KINDS,
  CIRCUIT_LOADS,
  CIRCUIT_SHAPES,
  type CircuitLoad,
  CONDUCTOR_MATERIALS,
  DEVICE_STANDARDS,
  type Evidence,
  factNotKnown,
  GROUPINGS,
  INSULATIONS,
  isExact,
  isKnown,
  isKnownFact,
  type Judgement,
  published,
  REFERENCE_METHODS,
  type Reckoner,
  type Remark,
  TERM,
} from "@good-grounds/core";
import { MATTER } from "@good-grounds/inspection";
import {
  ambientFactor,
  groupingFactor,
  semiEnclosedFactor,
  source,
  tabulatedCapacity,
  thermalInsulationFactor,
} from "@good-grounds/tables";
import { check, concluded } from "../check.ts";
import { ASKED, QUESTION } from "../matters.ts";
import { asksQuantity, asksWord, asksWords, asksYesNo, type Given } from "../need.ts";

const needs = {
  shape: asksWord(MATTER.circuitShape, CIRCUIT_SHAPES),
  load: asksWord(MATTER.circuitLoad, CIRCUIT_LOADS),
  phases: asksWord(MATTER.phases, ["1", "3"]),
  standard: asksWord(MATTER.deviceStandard, DEVICE_STANDARDS),
  rated: asksQuantity(TERM.ratedCurrent, "32 A"),
  designCurrent: asksQuantity(TERM.designCurrent, "26 A"),
  kind: asksWord(MATTER.cableKind, CABLE_KINDS),
  insulation: asksWord(MATTER.insulation, INSULATIONS),
  material: asksWord(MATTER.material, CONDUCTOR_MATERIALS),
  line: asksQuantity(TERM.lineArea, "2.5 mm²"),
  methods: asksWords(MATTER.method, REFERENCE_METHODS, "every method the route may have"),
  ambient: asksQuantity(TERM.ambientTemperature, "30 °C"),
  grouping: asksWord(MATTER.grouping, GROUPINGS),
  groupedCircuits: asksQuantity(TERM.count, "3"),
  surrounded: asksQuantity(TERM.length, "0.2 m surrounded by thermal insulation"),
  overloadRelay: asksYesNo(ASKED.overloadRelay),
};

type GivenHere = Given<typeof needs>;

const MOTOR = {
  shape: "radial",
  load: "motor",
  phases: "3",
  standard: "BS 88-2",
  rated: "32 A",
  designCurrent: "14 A",
  kind: "multicore",
  insulation: "70C-thermoplastic",
  material: "copper",
  line: "2.5 mm²",
  methods: ["B"],
} as const;

/**
 * Overload protection of the cable: In ≤ Iz with Iz = It·Ca·Cg·Ci, for a semi-enclosed fuse In ≤ 0.725·Iz; Ib ≤ In
 * where the design current is known (433.1.1). A ring of 30 A or 32 A asks of its cable at least 2.5 mm² (mineral
 * insulated 1.5 mm²) and 20 A (433.1.204), where not each leg alone is protected as a radial would be. A load that cannot
 * overload (a fixed heater) needs Ib ≤ Iz only (433.3.1); the cable of a motor may be protected by the relay of its
 * starter (433.2.1, 552.1.2), which a file does not record. Currents in A, sizes in mm². Every method an unseen route may
 * have is taken: the capacity is then the range of them all. Ambient temperature and grouping that were not recorded are
 * taken as 30 °C and one circuit alone, as stated assumptions.
 */
export const cableCapacity = check({
  id: "cable-capacity",
  scope: "circuit",
  title: "Device protects the cable against overload",
  formula: "Ib ≤ In ≤ It·Ca·Cg·Ci (·0.725 for BS 3036); ring: S ≥ 2.5 mm², Iz ≥ 20 A",
  regulations: ["433.1.1", "433.1.202", "433.1.204", "433.2.1", "433.3.1", "523"],
  needs,
  gather: ({ shape, load, phases, device, designCurrent, cable, board }, installation) => ({
    shape,
    load,
    phases: isKnownFact(phases) ? phases : isKnownFact(board.phases) ? board.phases : installation.supply.phases,
    standard: device.standard,
    rated: device.rated,
    designCurrent,
    kind: cable.kind,
    insulation: cable.insulation,
    material: cable.material,
    line: cable.line,
    methods: cable.methods,
    ambient: cable.ambient,
    grouping: cable.grouping,
    groupedCircuits: cable.groupedCircuits,
    surrounded: cable.surroundedByInsulation,
    overloadRelay: RELAY_NOT_RECORDED,
  }),
  conclude(given, reckon) {
    const { shape, rated, designCurrent } = given;
    const capacity = asInstalled(given, reckon);
    const allowed = usable(given, capacity, reckon);
    const protects = reckon.atMost(QUESTION.deviceWithinCable, rated, allowed);
    const overByTenth = reckon.product(TERM.cableCapacity, allowed, TENTH_OVER);
    const nearly = reckon.atMost(QUESTION.deviceWithinTenth, rated, overByTenth);
    if (!isKnownFact(shape)) {
      const open = (about: typeof QUESTION.cableCarries) =>
        reckon.settled(about, "not-known", "ring or radial", shape, capacity);
      return concluded(
        open(QUESTION.cableCarries),
        [],
        [],
        [open(QUESTION.deviceWithinCable), open(QUESTION.deviceWithinTenth)],
      );
    }
    if (shape.word === "ring") {
      const asRing = asRingFinal(given, capacity, reckon);
      return concluded(reckon.any(QUESTION.cableCarries, asRing, protects), [], conditions(given), [
        reckon.any(QUESTION.deviceWithinCable, asRing, protects),
        reckon.any(QUESTION.deviceWithinTenth, asRing, nearly),
      ]);
    }
    const judgement = reckon.any(QUESTION.cableCarries, protects, ...otherwiseProtected(given, capacity, reckon));
    const remarks = [...conditions(given), ...restsOnRelay(given, protects)];
    if (!isKnown(designCurrent)) return concluded(judgement, [], [...remarks, NO_DESIGN_CURRENT], [protects, nearly]);
    const within = reckon.atMost(QUESTION.loadWithinDevice, designCurrent, rated);
    return concluded(reckon.all(QUESTION.cableCarries, judgement, within), [], remarks, [protects, nearly]);
  },
  examples: [
    {
      name: "45 A device on 6 mm² above a ceiling under deep insulation",
      given: {
        shape: "radial",
        load: "shower",
        phases: "1",
        standard: "BS EN 61009",
        rated: "45 A",
        designCurrent: "41.3 A",
        kind: "flat-twin-and-cpc",
        insulation: "70C-thermoplastic",
        material: "copper",
        line: "6 mm²",
        methods: ["101"],
      },
      verdict: "not-met",
      values: { "tabulated-capacity": { value: 27, within: 1e-9 } },
      source: "BS 7671 Table 4D5: 6 mm² method 101, 27 A",
    },
    {
      name: "route not seen: one of two methods",
      given: {
        shape: "radial",
        load: "cooker",
        phases: "1",
        standard: "BS EN 60898",
        rated: "40 A",
        kind: "flat-twin-and-cpc",
        insulation: "70C-thermoplastic",
        material: "copper",
        line: "6 mm²",
        methods: ["C", "100"],
      },
      verdict: "too-near",
      source: "BS 7671 Table 4D5: 47 A clipped direct, 34 A method 100",
    },
    {
      name: "ring clipped direct",
      given: {
        shape: "ring",
        load: "socket-outlets",
        phases: "1",
        standard: "BS EN 60898",
        rated: "32 A",
        kind: "flat-twin-and-cpc",
        insulation: "70C-thermoplastic",
        material: "copper",
        line: "2.5 mm²",
        methods: ["C"],
      },
      verdict: "met",
      source: "BS 7671 433.1.204: 27 A ≥ 20 A",
    },
    {
      name: "ring wholly in insulation",
      given: {
        shape: "ring",
        load: "socket-outlets",
        phases: "1",
        standard: "BS EN 60898",
        rated: "32 A",
        kind: "flat-twin-and-cpc",
        insulation: "70C-thermoplastic",
        material: "copper",
        line: "2.5 mm²",
        methods: ["103"],
      },
      verdict: "not-met",
      source: "BS 7671 Table 4D5: 13.5 A < 20 A",
    },
    {
      name: "ring in 1.5 mm²",
      given: {
        shape: "ring",
        load: "socket-outlets",
        phases: "1",
        standard: "BS 3036",
        rated: "30 A",
        kind: "flat-twin-and-cpc",
        insulation: "70C-thermoplastic",
        material: "copper",
        line: "1.5 mm²",
        methods: ["C"],
      },
      verdict: "not-met",
      values: { "cable-capacity": { value: 20, within: 1e-9 } },
      source: "BS 7671 433.1.204: 20 A is enough, 1.5 mm² is less than 2.5 mm²",
    },
    {
      name: "ring in mineral insulated 1.5 mm², of which no capacity is carried",
      given: {
        shape: "ring",
        load: "socket-outlets",
        phases: "1",
        standard: "BS EN 60898",
        rated: "32 A",
        kind: "mineral",
        insulation: "mineral-covered",
        material: "copper",
        line: "1.5 mm²",
        methods: ["C"],
      },
      verdict: "not-known",
      missing: ["tabulated-capacity"],
      source: "BS 7671 433.1.204 allows 1.5 mm² of mineral insulated cable",
    },
    {
      name: "ring of 16 A, each leg protected by itself",
      given: {
        shape: "ring",
        load: "lighting",
        phases: "1",
        standard: "BS EN 60898",
        rated: "16 A",
        kind: "flat-twin-and-cpc",
        insulation: "70C-thermoplastic",
        material: "copper",
        line: "1.5 mm²",
        methods: ["C"],
      },
      verdict: "met",
      source: "16 A ≤ 20 A (433.1.1)",
    },
    {
      name: "motor behind a fuse chosen for its start, relay not looked at",
      given: { ...MOTOR },
      verdict: "not-known",
      missing: ["overload-relay"],
      source: "32 A > 20 A; BS 7671 433.2.1, 552.1.2: an overload device at the load end protects the cable as well",
    },
    {
      name: "the same with its relay set within the cable",
      given: { ...MOTOR, overloadRelay: "yes" },
      verdict: "met",
      source: "14 A ≤ 20 A and the relay protects the cable",
    },
    {
      name: "the same without a relay",
      given: { ...MOTOR, overloadRelay: "no" },
      verdict: "not-met",
      source: "32 A > 20 A",
    },
    {
      name: "motor that draws more than its cable carries",
      given: { ...MOTOR, designCurrent: "22 A" },
      verdict: "not-met",
      source: "22 A > 20 A, whatever the relay",
    },
    {
      name: "semi-enclosed fuse",
      given: {
        shape: "radial",
        load: "fixed-equipment",
        phases: "1",
        standard: "BS 3036",
        rated: "30 A",
        kind: "flat-twin-and-cpc",
        insulation: "70C-thermoplastic",
        material: "copper",
        line: "4 mm²",
        methods: ["C"],
      },
      verdict: "not-met",
      source: "0.725 × 37 = 26.8 A < 30 A",
    },
    {
      name: "grouped with two others at 40 °C",
      given: {
        shape: "radial",
        load: "fixed-equipment",
        phases: "1",
        standard: "BS EN 60898",
        rated: "16 A",
        kind: "flat-twin-and-cpc",
        insulation: "70C-thermoplastic",
        material: "copper",
        line: "2.5 mm²",
        methods: ["C"],
        ambient: "40 °C",
        grouping: "bunched",
        groupedCircuits: "3",
      },
      verdict: "met",
      values: { "cable-capacity": { value: 27 * 0.87 * 0.7, within: 1e-9 } },
      source: "27 × 0.87 × 0.70 = 16.44 A",
    },
    {
      name: "method not recorded",
      given: {
        shape: "radial",
        load: "cooker",
        phases: "1",
        standard: "BS EN 60898",
        rated: "32 A",
        kind: "flat-twin-and-cpc",
        insulation: "70C-thermoplastic",
        material: "copper",
        line: "6 mm²",
      },
      verdict: "not-known",
      missing: ["reference-method"],
      source: "input missing",
    },
  ],
});

/** It·Ca·Cg·Ci for every method the route may have. */
function asInstalled(given: GivenHere, reckon: Reckoner): Evidence<"ampere"> {
  const { methods } = given;
  const each = methods.map((method) => {
    const it = tabulated(given, method, reckon);
    const warm = reckon.product(TERM.cableCapacity, it, ambientOf(given, reckon));
    const grouped = reckon.product(TERM.cableCapacity, warm, groupingOf(given, reckon));
    return isKnown(given.surrounded)
      ? reckon.product(TERM.cableCapacity, grouped, insulationOf(given, reckon))
      : grouped;
  });
  const [only] = each;
  if (each.length === 1 && only !== undefined) return only;
  if (each.length === 0) return reckon.lookedUp(TERM.cableCapacity, undefined, UNRECORDED_METHOD);
  return reckon.oneOf(TERM.cableCapacity, each);
}

function tabulated(given: GivenHere, method: GivenHere["methods"][number], reckon: Reckoner): Evidence<"ampere"> {
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

function ambientOf({ ambient, insulation }: GivenHere, reckon: Reckoner): Evidence<"ratio"> {
  if (!isKnown(ambient)) return AT_30;
  const figure = isKnownFact(insulation) ? ambientFactor(insulation.word, ambient.high) : undefined;
  return reckon.lookedUp(TERM.ambientFactor, figure, ambient, insulation);
}

function groupingOf({ grouping, groupedCircuits }: GivenHere, reckon: Reckoner): Evidence<"ratio"> {
  if (!isKnown(groupedCircuits)) return ALONE;
  const figure =
    isKnownFact(grouping) && isExact(groupedCircuits)
      ? groupingFactor(grouping.word, groupedCircuits.value)
      : undefined;
  return reckon.lookedUp(TERM.groupingFactor, figure, grouping, groupedCircuits);
}

function insulationOf({ surrounded }: GivenHere, reckon: Reckoner): Evidence<"ratio"> {
  const figure = isKnown(surrounded) ? thermalInsulationFactor(surrounded.high * 1000) : undefined;
  return reckon.lookedUp(TERM.insulationFactor, figure, surrounded);
}

/** What the device may be rated: a semi-enclosed fuse needs so much more current to melt that the cable must carry more. */
function usable({ standard }: GivenHere, capacity: Evidence<"ampere">, reckon: Reckoner): Evidence<"ampere"> {
  return isKnownFact(standard) && standard.word === "BS 3036"
    ? reckon.product(TERM.cableCapacity, capacity, semiEnclosedFactor)
    : capacity;
}

function asRingFinal({ rated, line, kind }: GivenHere, capacity: Evidence<"ampere">, reckon: Reckoner): Judgement {
  const least = isKnownFact(kind) ? (kind.word === "mineral" ? RING_MINERAL : RING_SIZE) : undefined;
  return reckon.all(
    QUESTION.ringCarries,
    reckon.atLeast(QUESTION.ringSize, line, reckon.lookedUp(TERM.requiredArea, least, kind)),
    reckon.atLeast(QUESTION.ringLegs, capacity, RING_LEG),
    reckon.atMost(QUESTION.deviceWithinRing, rated, RING_DEVICE),
  );
}

/** Loads whose current their own design limits; they need no overload protection of their cable. */
const CANNOT_OVERLOAD: ReadonlySet<CircuitLoad> = new Set(["shower", "water-heater", "storage-heating", "heating"]);

/** What can protect the cable, or make protection needless, where the device at its origin does not. */
function otherwiseProtected(
  { load, designCurrent, overloadRelay }: GivenHere,
  capacity: Evidence<"ampere">,
  reckon: Reckoner,
): readonly Judgement[] {
  if (!isKnownFact(load)) return [];
  const within = () => reckon.atMost(QUESTION.loadWithinCable, designCurrent, capacity);
  if (load.word === "motor") {
    const relay = reckon.byWord(QUESTION.relayProtects, overloadRelay, (set) => (set ? "met" : "not-met"));
    return [reckon.all(QUESTION.relayProtects, within(), relay)];
  }
  return CANNOT_OVERLOAD.has(load.word) && isKnown(designCurrent) ? [within()] : [];
}

function restsOnRelay({ load }: GivenHere, protects: Judgement): readonly Remark[] {
  return isKnownFact(load) && load.word === "motor" && protects.verdict === "not-met" ? [RELAY] : [];
}

function conditions({ ambient, groupedCircuits }: GivenHere): readonly Remark[] {
  return isKnown(ambient) && isKnown(groupedCircuits) ? [] : [CONDITIONS];
}

const RING = source("BS 7671 433.1.204", "2008 to 2018+A4", "published");
const RING_SIZE = published(TERM.requiredArea, 2.5, RING, "conductors of a ring final circuit");
const RING_MINERAL = published(TERM.requiredArea, 1.5, RING, "mineral insulated conductors of a ring final circuit");
const RING_LEG = published(TERM.requiredCapacity, 20, RING, "cable of a ring final circuit");
const RING_DEVICE = published(TERM.permittedRatedCurrent, 32, RING, "device of a ring final circuit, 30 A or 32 A");
const TENTH_OVER = assumed(TERM.tenthOver, 1.1, "how far above the capacity still counts as slightly");
const RELAY_NOT_RECORDED = factNotKnown(ASKED.overloadRelay, ["load"]);
const AT_30 = assumed(
  TERM.ambientFactor,
  1,
  "ambient temperature along the route not recorded; the table's 30 °C is taken",
);
const ALONE = assumed(TERM.groupingFactor, 1, "no grouping recorded; the circuit is taken to run by itself");
const UNRECORDED_METHOD = Object.freeze({
  kind: "fact-not-known",
  matter: MATTER.method,
  detail: Object.freeze({ path: Object.freeze(["cable", "methods"]), silence: "absent", reason: "" }),
} as const);

const CONDITIONS: Remark = Object.freeze({
  code: "capacity-conditions-assumed",
  words: "Ambient temperature or grouping was not recorded: the capacity holds for 30 °C and a circuit by itself.",
});

const RELAY: Remark = Object.freeze({
  code: "rests-on-overload-relay",
  words:
    "The device is rated above what the cable carries, as one chosen for the start of a motor may be. Only an overload relay in the starter protects the cable: look at its setting.",
});

const NO_DESIGN_CURRENT: Remark = Object.freeze({
  code: "design-current-not-recorded",
  words: "The design current was not recorded, so it was not held against the rated current.",
});
