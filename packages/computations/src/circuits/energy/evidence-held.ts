import type { Judgement, Remark } from "@good-grounds/core";
import type { OvercurrentEnergy } from "./energy-marks.ts";

const PROVED_BY_MAKER: Remark = Object.freeze({
  code: "energy-expected",
  words:
    "Expected, not proven. The maker's energy let through at the fault current of the board would prove it: state it as the let-through of the device.",
});

const NONE: readonly Remark[] = Object.freeze([]);

/** What is said of the evidence for an energy: nothing where the verdict is met and proven. */
export function evidenceHeld({ verdict, grade }: Judgement, { remarks }: OvercurrentEnergy): readonly Remark[] {
  if (verdict === "met") return grade === "proven" ? NONE : [PROVED_BY_MAKER];
  return verdict === "not-met" && grade === "expected" ? [PROVED_BY_MAKER] : remarks;
}
