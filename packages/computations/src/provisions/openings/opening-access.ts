import { type Fact, isKnown, isKnownFact, type Judgement, type Reckoner, type Remark, TERM } from "@good-grounds/core";
import { accessProbe } from "@good-grounds/tables";
import { concluded } from "../../check.ts";
import { asksQuantity, asksWord, asksYesNo, type Given } from "../../need.ts";
import { assessor } from "../assessor.ts";
import { denied } from "../opposite.ts";
import { wantsOneOf } from "../verdicts.ts";
import { OPENING_EXAMPLES } from "./examples.ts";
import { OPENINGS } from "./matters.ts";
import { type OpeningAsked, probeReaches, WIRE_DIAMETER } from "./probe-reaches.ts";
import { SPHERE_DIAMETER } from "./solid-sphere.ts";

/** What stands between an opening and the live part: the least probe it keeps off. */
const BARRIERS_BEHIND = ["none", "stops-finger", "stops-wire"] as const;

const needs = {
  shape: asksWord(
    OPENINGS.shape,
    ["rectangular", "round", "irregular"],
    "irregular: give its two widths at the widest",
  ),
  width: asksQuantity(TERM.openingWidth, "17.5 mm; the diameter where it is round"),
  height: asksQuantity(TERM.openingHeight, "45 mm; leave out where it is round"),
  depth: asksQuantity(TERM.depthToLive, "25 mm"),
  offset: asksQuantity(TERM.offsetToLive, "0 mm where it lies behind the opening"),
  barrierBehind: asksWord(OPENINGS.barrierBehind, BARRIERS_BEHIND),
  face: asksWord(OPENINGS.face, ["front", "side", "top", "bottom"]),
  easyReach: asksYesNo(OPENINGS.easyReach, "asked for a horizontal top"),
};

/**
 * Whether an opening keeps live parts from touch (416.2.1: IPXXB or IP2X everywhere; 416.2.2: IPXXD or IP4X as well in a
 * horizontal top in easy reach). From the widths of the opening, and depth and offset of the nearest live part, all in m,
 * it works out how deep each probe reaches at that offset, as a band from what is certain to what cannot be passed; a
 * live part between the two is too near to call and wants the probe itself. The wall is taken as thin, which is the safe
 * side. Clear means not touched, as for voltages up to 1000 V; a part just at the end of a probe counts as touched. Since either code is enough and IP2X asks for the finger
 * too, the finger decides; the 12.5 mm sphere, the 2.5 mm rod and the 50 mm sphere are shown beside.
 */
export const openingAccess = assessor({
  id: "opening-access",
  provision: "barriers-and-enclosures",
  title: "Opening keeps live parts from touch",
  formula: "d > d,max of the jointed finger; horizontal top in easy reach: d > d,max of the 1 mm wire, or w < 1 mm",
  regulations: ["416.2.1", "416.2.2"],
  needs,
  conclude(given, reckon) {
    const asked = widthsOf(given, reckon);
    const reach = probeReaches(asked, reckon);
    const { depth } = given;
    const finger = clear(
      given.barrierBehind,
      ["stops-finger", "stops-wire"],
      OPENINGS.fingerClear,
      reckon.atLeast(OPENINGS.fingerShort, depth, reach.finger),
      reckon,
    );
    const wire = clear(
      given.barrierBehind,
      ["stops-wire"],
      OPENINGS.wireClear,
      reckon.atLeast(OPENINGS.wireShort, depth, reach.wire),
      reckon,
    );
    const sphere = denied(
      reckon,
      OPENINGS.sphereStopped,
      reckon.atLeast(OPENINGS.sphereEnters, asked.least, SPHERE_DIAMETER),
      "",
    );
    const top = topClosed(given, wire, asked, reckon);
    const judgement = top === undefined ? finger : reckon.all(OPENINGS.keptOut, finger, top);
    const beside = reckon.beside(() => [
      reckon.all(OPENINGS.ip2x, sphere, finger),
      reckon.atLeast(OPENINGS.rodShort, depth, reach.rod),
      reckon.atLeast(OPENINGS.handShort, depth, reach.hand),
    ]);
    return concluded(judgement, beside, remarksOf(given, finger, sphere));
  },
  examples: OPENING_EXAMPLES,
});

function widthsOf({ shape, width, height, offset }: Given<typeof needs>, reckon: Reckoner): OpeningAsked {
  if (!isKnownFact(shape)) {
    return {
      least: reckon.lookedUp(TERM.leastWidth, undefined, shape, width),
      greatest: reckon.lookedUp(TERM.greatestWidth, undefined, shape, width),
      offset,
    };
  }
  if (shape.word === "round") {
    return { least: reckon.same(TERM.leastWidth, width), greatest: reckon.same(TERM.greatestWidth, width), offset };
  }
  return {
    least: reckon.smallest(TERM.leastWidth, width, height),
    greatest: reckon.largest(TERM.greatestWidth, width, height),
    offset,
  };
}

/** Clear of a probe: by a barrier behind that stops it, or by distance. */
function clear(
  barrier: Fact<(typeof BARRIERS_BEHIND)[number]>,
  stopping: readonly (typeof BARRIERS_BEHIND)[number][],
  about: (typeof OPENINGS)["fingerClear"],
  byDistance: Judgement,
  reckon: Reckoner,
): Judgement {
  return reckon.any(about, byDistance, wantsOneOf(reckon, OPENINGS.barrierStops, barrier, stopping));
}

/** The further demand on a horizontal top; undefined where the opening is known to be elsewhere. */
function topClosed(
  { face, easyReach }: Given<typeof needs>,
  wire: Judgement,
  { least }: OpeningAsked,
  reckon: Reckoner,
): Judgement | undefined {
  const elsewhere = isKnownFact(face) && face.word !== "top";
  if (elsewhere || (isKnownFact(easyReach) && !easyReach.word)) return undefined;
  const isTop = isKnownFact(face) && isKnownFact(easyReach);
  return reckon.any(
    OPENINGS.topClosed,
    wire,
    denied(reckon, OPENINGS.wireStopped, reckon.atLeast(OPENINGS.wireEnters, least, WIRE_DIAMETER), ""),
    reckon.settled(OPENINGS.notTop, isTop ? "not-met" : "not-known", "", face, easyReach),
  );
}

function remarksOf({ depth }: Given<typeof needs>, finger: Judgement, sphere: Judgement): readonly Remark[] {
  const remarks: Remark[] = [];
  if (isKnown(depth) && finger.verdict === "too-near") remarks.push(TRY_PROBE);
  if (finger.verdict === "met" && sphere.verdict === "not-met") remarks.push(SPHERE_ENTERS);
  return remarks;
}

const { length } = accessProbe("B");

const TRY_PROBE: Remark = Object.freeze({
  code: "try-the-probe",
  words: `The live part lies where a finger of ${length} mm may or may not reach. Isolate and prove it dead before trying the jointed finger.`,
});

const SPHERE_ENTERS: Remark = Object.freeze({
  code: "sphere-enters",
  words:
    "The finger stays clear, so IPXXB holds; IP2X does not, since a 12.5 mm sphere enters. A thinner object could be pushed in, and if a part is missing the enclosure is no longer as made.",
});
