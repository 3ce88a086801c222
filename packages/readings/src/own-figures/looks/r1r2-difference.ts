import type { Look } from "../look.ts";
import { REPEATABILITY_ASSUMED } from "../repeatability.ts";
import { exactSums, sumsOf } from "./zs-sum.ts";

/** R1+R2 that is Zs less the loop before the circuit, and was written down after Zs. */
export const r1r2Difference: Look = {
  id: "r1r2-difference",
  title: "R1+R2 comes out as Zs less the loop before it",
  test: "Counts circuits where R1+R2 = Zs − Zdb, or Zs − Ze, to the last digit, with R1+R2 written down after Zs or without a time of its own, and compares the count with what repeatability allows.",
  assumed: [REPEATABILITY_ASSUMED],
  innocent: [
    "R1+R2 was worked out on purpose where the dead test was not possible: say so in the method of the reading",
    "the dead tests were typed in after the live ones from a paper sheet",
  ],
  look: (job) =>
    sumsOf(job.rows, "zdb").length + sumsOf(job.rows, "ze").length === 0
      ? { because: "no circuit has Zs, R1+R2 and the loop before it" }
      : exactSums(job, true),
};
