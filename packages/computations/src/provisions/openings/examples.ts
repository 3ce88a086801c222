import type { Example } from "../../check.ts";

const FRONT = { face: "front", barrierBehind: "none", offset: "0 mm" } as const;

/** Worked cases of `opening-access`. */
export const OPENING_EXAMPLES: readonly Example[] = Object.freeze([
  {
    name: "one missing blank, busbar straight behind",
    given: { ...FRONT, shape: "rectangular", width: "17.5 mm", height: "45 mm", depth: "25 mm" },
    verdict: "not-met",
    values: { "probe-reach": { value: 0.08, within: 2e-6 } },
    source: "17.5 mm is more than the finger's 12 mm; 25 mm is less than its 80 mm",
  },
  {
    name: "the same opening, live part behind a shroud",
    given: {
      ...FRONT,
      shape: "rectangular",
      width: "17.5 mm",
      height: "45 mm",
      depth: "25 mm",
      barrierBehind: "stops-finger",
    },
    verdict: "met",
    source: "BS 7671 416.2.1: IPXXB is enough; the sphere of IP2X enters",
  },
  {
    name: "just at the end of the finger",
    given: { ...FRONT, shape: "round", width: "20 mm", depth: "80 mm" },
    verdict: "not-met",
    source: "a tie counts as touched",
  },
  {
    name: "deeper than the finger",
    given: { ...FRONT, shape: "round", width: "20 mm", depth: "85 mm" },
    verdict: "met",
    source: "85 mm is more than 80 mm; 20 mm does not let the stop face pass",
  },
  {
    name: "round the corner, reached by the bent finger",
    given: { ...FRONT, shape: "round", width: "20 mm", depth: "55 mm", offset: "30 mm" },
    verdict: "not-met",
    values: { "probe-reach": { value: 0.06956, within: 0.006 } },
    source: "20 + √(60² − 36²) = 20 + 48 = 68 mm is more than 55 mm",
  },
  {
    name: "round the corner, between certain and possible",
    given: { ...FRONT, shape: "round", width: "20 mm", depth: "20 mm", offset: "57 mm" },
    verdict: "too-near",
    source: "57 + 6 is more than 60, but the finger may lean in an opening of 20 mm",
  },
  {
    name: "a hand passes",
    given: { ...FRONT, shape: "rectangular", width: "45 mm", height: "140 mm", depth: "200 mm" },
    verdict: "not-met",
    source: "the stop face of 50 mm × 20 mm passes, so nothing limits the depth",
  },
  {
    name: "slot in the top, wire reaches a terminal",
    given: {
      shape: "rectangular",
      width: "3 mm",
      height: "40 mm",
      depth: "60 mm",
      offset: "0 mm",
      barrierBehind: "none",
      face: "top",
      easyReach: "yes",
    },
    verdict: "not-met",
    source: "BS 7671 416.2.2: 3 mm is more than the wire's 1 mm, 60 mm is less than its 100 mm",
  },
  {
    name: "the same slot in the front",
    given: { ...FRONT, shape: "rectangular", width: "3 mm", height: "40 mm", depth: "60 mm" },
    verdict: "met",
    source: "BS 7671 416.2.1: no finger enters 3 mm",
  },
  {
    name: "measured as a range across the finger's width",
    given: { ...FRONT, shape: "rectangular", width: "11 mm to 13 mm", height: "45 mm", depth: "25 mm" },
    verdict: "too-near",
    source: "at 11 mm the finger does not enter, at 13 mm it reaches",
  },
  {
    name: "depth not measured",
    given: { ...FRONT, shape: "rectangular", width: "17.5 mm", height: "45 mm" },
    verdict: "not-known",
    missing: ["depth-to-live"],
    source: "an input that is missing leaves the comparison open",
  },
]);
