import { type NotKnown, type Published, published, type RcdType, TERM } from "@good-grounds/core";
import { notTabulated } from "../not-tabulated.ts";
import { source } from "../sources.ts";

const MANUALS = source("two installation-tester manuals, RCD pages; BS EN 61008-1, BS EN 62423", "none", "published");

/** Rated residual current the test currents are tabulated for, A. */
const TABULATED = 0.03;

/** R.m.s. current in A of the test at IΔn, 30 mA device. Type B by smooth direct current. */
const TEST_CURRENTS: Readonly<Record<RcdType, Published<"ampere">>> = Object.freeze({
  AC: published(TERM.current, 0.03, MANUALS, "type AC, alternating"),
  A: published(TERM.current, 0.042, MANUALS, "type A, pulsating"),
  F: published(TERM.current, 0.042, MANUALS, "type F, pulsating"),
  B: published(TERM.current, 0.06, MANUALS, "type B, smooth direct"),
});

/**
 * The test current in A at IΔn in the waveform an RCD type responds to. Tabulated for 30 mA devices only: the factor of
 * other ratings differs. Since amendment 2 one test with alternating current is enough for every type.
 */
export function rcdTestCurrent(type: RcdType, residualCurrentAmpere: number): Published<"ampere"> | NotKnown<"ampere"> {
  if (residualCurrentAmpere === TABULATED) return TEST_CURRENTS[type];
  return notTabulated(TERM.current, "the testers' manuals", `type ${type}, IΔn ${residualCurrentAmpere} A`);
}

/** Parts of IΔn between which an RCD has to operate as the current rises. */
export interface TrippingRange {
  readonly least: Published<"ratio">;
  readonly greatest: Published<"ratio">;
}

const range = (least: number, greatest: number, row: string): TrippingRange =>
  Object.freeze({
    least: published(TERM.ratio, least, MANUALS, `${row}, operates from`),
    greatest: published(TERM.ratio, greatest, MANUALS, `${row}, operates by`),
  });

const AC = range(0.5, 1, "type AC");
const A_SMALL = range(0.35, 2, "type A, IΔn up to 10 mA");
const A = range(0.35, 1.4, "type A, IΔn above 10 mA");
const B = range(0.5, 2, "type B");

/** Range of the operating current by type and IΔn in A; type F has no row. */
export function trippingRange(type: RcdType, residualCurrentAmpere: number): TrippingRange | NotKnown<"ratio"> {
  if (residualCurrentAmpere > 0) {
    if (type === "AC") return AC;
    if (type === "B") return B;
    if (type === "A") return residualCurrentAmpere <= 0.01 ? A_SMALL : A;
  }
  return notTabulated(TERM.ratio, "the testers' manuals", `type ${type}, IΔn ${residualCurrentAmpere} A`);
}
