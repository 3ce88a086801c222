import { assumed, type Evidence, isKnown, type Reckoner, TERM } from "@good-grounds/core";
import { calculation } from "../check.ts";
import { asksQuantity } from "../need.ts";

/**
 * Reading at a point of a sound ring whose line and protective conductors (or line and neutral) are cross-connected at
 * the board: the two ways A = x·r1 + (1 − x)·r2 and B = (1 − x)·r1 + x·r2 in parallel, plus a spur at the point. End-to-end
 * resistances in Ω; x from 0 beside the board to 1. Least at the board, greatest at half way, where it is (r1 + r2)/4;
 * the same everywhere when r1 = r2.
 */
export const ringReading = calculation({
  id: "ring-reading",
  title: "Reading at a point of a cross-connected ring",
  formula: "R = A·B ÷ (A + B) + spur",
  regulations: ["643.2.1"],
  needs: {
    r1: asksQuantity(TERM.ringLine, "0.44 Ω"),
    r2: asksQuantity(TERM.ringCpc, "0.73 Ω"),
    position: asksQuantity(TERM.ringPosition, "0.25, or 25 %"),
    spur: asksQuantity(TERM.spurResistance, "0.10 Ω; leave out where there is none"),
  },
  compute({ r1, r2, position, spur }, reckon) {
    const rest = restOf(position, reckon);
    const wayOut = reckon.sum(
      TERM.ringWayOut,
      reckon.product(TERM.resistance, r1, position),
      reckon.product(TERM.resistance, r2, rest),
    );
    const wayBack = reckon.sum(
      TERM.ringWayBack,
      reckon.product(TERM.resistance, r1, rest),
      reckon.product(TERM.resistance, r2, position),
    );
    const onRing = reckon.inParallel(TERM.ringReading, [wayOut, wayBack]);
    return { results: [isKnown(spur) ? reckon.sum(TERM.ringReading, onRing, spur) : onRing], remarks: [] };
  },
  examples: [
    {
      name: "beside the board",
      given: { r1: "0.4446 Ω", r2: "0.726 Ω", position: "0" },
      values: { "ring-reading": { value: 0.275739, within: 1e-6 } },
      source: "r1·r2 ÷ (r1 + r2)",
    },
    {
      name: "half way round",
      given: { r1: "0.4446 Ω", r2: "0.726 Ω", position: "0.5" },
      values: { "ring-reading": { value: (0.4446 + 0.726) / 4, within: 1e-12 } },
      source: "(r1 + r2) ÷ 4",
    },
    {
      name: "half way with 5 m of unfused spur",
      given: { r1: "0.4446 Ω", r2: "0.726 Ω", position: "0.5", spur: "0.09755 Ω" },
      values: { "ring-reading": { value: 0.3902, within: 1e-6 } },
      source: "(r1 + r2) ÷ 4 + 5 m × 19.51 mΩ/m",
    },
    {
      name: "position not given",
      given: { r1: "0.44 Ω", r2: "0.73 Ω" },
      missing: ["ring-position"],
      source: "input missing",
    },
  ],
});

const WHOLE = assumed(TERM.ringPosition, 1, "the whole length of the ring");

function restOf(position: Evidence<"ratio">, reckon: Reckoner): Evidence<"ratio"> {
  return reckon.difference(TERM.ringRest, WHOLE, position);
}
