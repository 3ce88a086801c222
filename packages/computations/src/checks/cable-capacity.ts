import {
  assumed,
  CABLE_KINDS,
  CIRCUIT_LOADS,
  CIRCUIT_SHAPES,
  CONDUCTOR_MATERIALS,
  DEVICE_STANDARDS,
  type Evidence,
  factNotKnown,
  GROUPINGS,
  INSULATIONS,
  isKnown,
  isKnownFact,
  type Judgement,
  type Matter,
  published,
  REFERENCE_METHODS,
  type Reckoner,
  type Remark,
  TERM,
} from "@good-grounds/core";
import { MATTER } from "@good-grounds/inspection";
import { semiEnclosedFactor, source } from "@good-grounds/tables";
import { check, concluded } from "../check.ts";
import { capacityRemarks } from "../circuits/cable/capacity-remarks.ts";
import { installedCapacity } from "../circuits/cable/installed-capacity.ts";
import { otherwiseProtected, restsOnRelay } from "../circuits/cable/otherwise-protected.ts";
import { ASKED, QUESTION } from "../matters.ts";
import { asksQuantity, asksWord, asksWords, asksYesNo, type Given } from "../need.ts";
import { CABLE_CAPACITY_EXAMPLES } from "./examples/cable-capacity.ts";

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
  hotTerminals: asksYesNo(ASKED.hotTerminals),
};

type GivenHere = Given<typeof needs>;

/**
 * Overload protection of the cable: In ≤ Iz with Iz = It·Ca·Cg·Ci, for a semi-enclosed fuse In ≤ 0.725·Iz; Ib ≤ In
 * where the design current is known (433.1.1). A ring of 30 A or 32 A asks of its cable at least 2.5 mm² (mineral
 * insulated 1.5 mm²) and 20 A (433.1.204), where not each leg alone is protected as a radial would be. A load that cannot
 * overload (a fixed heater) needs Ib ≤ Iz only (433.3.1); the cable of a motor may be protected by the relay of its
 * starter (433.2.1, 552.1.2), which a file does not record. Currents in A, sizes in mm². Every method an unseen route may
 * have is taken: the capacity is then the range of them all. Ambient temperature and grouping that were not recorded are
 * taken as 30 °C (20 °C in the ground) and one circuit alone, as stated assumptions. A cable for 90 °C carries what its
 * terminals stand: as one for 70 °C where they are not made for more, and either where that is not known.
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
    hotTerminals: TERMINALS_NOT_RECORDED,
  }),
  conclude(given, reckon) {
    const { shape, rated, designCurrent } = given;
    const capacity = installedCapacity(given, reckon);
    const allowed = usable(given, capacity, reckon);
    const protects = reckon.atMost(QUESTION.deviceWithinCable, rated, allowed);
    if (!isKnownFact(shape)) {
      const open = (about: Matter) => reckon.settled(about, "not-known", "ring or radial", shape, capacity);
      return concluded(
        open(QUESTION.cableCarries),
        [],
        [],
        [open(QUESTION.deviceWithinCable), open(QUESTION.deviceWithinTenth)],
      );
    }
    if (shape.word === "ring") {
      const asRing = asRingFinal(given, capacity, reckon);
      const within = reckon.any(QUESTION.deviceWithinCable, asRing, protects);
      const settles = [within, excess(within, [asRing], rated, allowed, reckon)];
      return concluded(
        reckon.any(QUESTION.cableCarries, asRing, protects),
        [],
        capacityRemarks(given, asRing),
        settles,
      );
    }
    const judgement = reckon.any(QUESTION.cableCarries, protects, ...otherwiseProtected(given, capacity, reckon));
    const remarks = [...capacityRemarks(given, judgement), ...restsOnRelay(given, protects)];
    const settles = [protects, excess(protects, [], rated, allowed, reckon)];
    if (!isKnown(designCurrent)) return concluded(judgement, [], [...remarks, NO_DESIGN_CURRENT], settles);
    const within = reckon.atMost(QUESTION.loadWithinDevice, designCurrent, rated);
    return concluded(reckon.all(QUESTION.cableCarries, judgement, within), [], remarks, settles);
  },
  examples: CABLE_CAPACITY_EXAMPLES,
});

/**
 * By how much the device is over, where it is over: that of a sound cable says nothing of another one. `otherwise` is what
 * would do instead.
 */
function excess(
  within: Judgement,
  otherwise: readonly Judgement[],
  rated: Evidence<"ampere">,
  allowed: Evidence<"ampere">,
  reckon: Reckoner,
): Judgement {
  if (within.verdict !== "not-met")
    return reckon.settled(QUESTION.deviceWithinTenth, "not-known", "not shown to be over", rated, allowed);
  const overByTenth = reckon.product(TERM.cableCapacity, allowed, TENTH_OVER);
  return reckon.any(
    QUESTION.deviceWithinTenth,
    ...otherwise,
    reckon.atMost(QUESTION.deviceWithinTenth, rated, overByTenth),
  );
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

const RING = source("BS 7671 433.1.204", "2008 to 2018+A4", "published");
const RING_SIZE = published(TERM.requiredArea, 2.5, RING, "conductors of a ring final circuit");
const RING_MINERAL = published(TERM.requiredArea, 1.5, RING, "mineral insulated conductors of a ring final circuit");
const RING_LEG = published(TERM.requiredCapacity, 20, RING, "cable of a ring final circuit");
const RING_DEVICE = published(TERM.permittedRatedCurrent, 32, RING, "device of a ring final circuit, 30 A or 32 A");
const TENTH_OVER = assumed(TERM.tenthOver, 1.1, "how far above the capacity still counts as slightly");
const RELAY_NOT_RECORDED = factNotKnown(ASKED.overloadRelay, ["load"]);
const TERMINALS_NOT_RECORDED = factNotKnown(ASKED.hotTerminals, ["cable", "terminals"]);

const NO_DESIGN_CURRENT: Remark = Object.freeze({
  code: "design-current-not-recorded",
  words: "The design current was not recorded, so it was not held against the rated current.",
});
