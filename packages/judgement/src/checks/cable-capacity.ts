import {
  assumed,
  CABLE_KINDS,
  CIRCUIT_LOADS,
  CIRCUIT_SHAPES,
  type CircuitLoad,
  CONDUCTOR_MATERIALS,
  DEVICE_STANDARDS,
  type Evidence,
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
import { QUESTION } from "../matters.ts";
import { asksQuantity, asksWord, asksWords, type Given } from "../need.ts";

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
};

type GivenHere = Given<typeof needs>;

/**
 * Overload protection of the cable: In ≤ Iz with Iz = It·Ca·Cg·Ci, for a semi-enclosed fuse In ≤ 0.725·Iz; Ib ≤ In
 * where the design current is known (433.1.1). A ring of 30 A or 32 A asks at least 20 A of its cable (433.1.204). A load
 * that cannot overload (a fixed heater) needs Ib ≤ Iz only (433.3.1). Currents in A, sizes in mm². Every method an
 * unseen route may have is taken: the capacity is then the range of them all. Ambient temperature and grouping that were
 * not recorded are taken as 30 °C and one circuit alone, as stated assumptions.
 */
export const cableCapacity = check({
  id: "cable-capacity",
  scope: "circuit",
  title: "Device protects the cable against overload",
  formula: "Ib ≤ In ≤ It·Ca·Cg·Ci (·0.725 for BS 3036); ring: Iz ≥ 20 A",
  regulations: ["433.1.1", "433.1.202", "433.1.204", "433.3.1", "523"],
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
  }),
  conclude(given, reckon) {
    const { shape, rated, designCurrent, standard } = given;
    const capacity = asInstalled(given, reckon);
    if (isKnownFact(shape) && shape.word === "ring") {
      return concluded(
        reckon.all(
          QUESTION.cableCarries,
          reckon.atLeast(QUESTION.ringLegs, capacity, RING_LEG),
          reckon.atMost(QUESTION.deviceWithinCable, rated, RING_DEVICE),
        ),
        [],
        conditions(given),
      );
    }
    if (!isKnownFact(shape)) {
      return concluded(reckon.settled(QUESTION.cableCarries, "not-known", "ring or radial", shape, capacity), [], []);
    }
    const usable =
      isKnownFact(standard) && standard.word === "BS 3036"
        ? reckon.product(TERM.cableCapacity, capacity, semiEnclosedFactor)
        : capacity;
    const protects = reckon.atMost(QUESTION.deviceWithinCable, rated, usable);
    const judgement = reckon.any(QUESTION.cableCarries, protects, ...cannotOverload(given, capacity, reckon));
    if (!isKnown(designCurrent)) return concluded(judgement, [], [...conditions(given), NO_DESIGN_CURRENT]);
    const within = reckon.atMost(QUESTION.loadWithinDevice, designCurrent, rated);
    return concluded(reckon.all(QUESTION.cableCarries, judgement, within), [], conditions(given));
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

/** Loads whose current their own design limits; they need no overload protection of their cable. */
const CANNOT_OVERLOAD: ReadonlySet<CircuitLoad> = new Set(["shower", "water-heater", "storage-heating", "heating"]);

function cannotOverload(
  { load, designCurrent }: GivenHere,
  capacity: Evidence<"ampere">,
  reckon: Reckoner,
): readonly Judgement[] {
  if (!isKnownFact(load) || !CANNOT_OVERLOAD.has(load.word) || !isKnown(designCurrent)) return [];
  return [reckon.atMost(QUESTION.loadWithinCable, designCurrent, capacity)];
}

function conditions({ ambient, groupedCircuits }: GivenHere): readonly Remark[] {
  return isKnown(ambient) && isKnown(groupedCircuits) ? [] : [CONDITIONS];
}

const RING = source("BS 7671 433.1.204", "2008 to 2018+A4", "published");
const RING_LEG = published(TERM.requiredCapacity, 20, RING, "cable of a ring final circuit");
const RING_DEVICE = published(TERM.ratedCurrent, 32, RING, "device of a ring final circuit, 30 A or 32 A");
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

const NO_DESIGN_CURRENT: Remark = Object.freeze({
  code: "design-current-not-recorded",
  words: "The design current was not recorded, so it was not held against the rated current.",
});
