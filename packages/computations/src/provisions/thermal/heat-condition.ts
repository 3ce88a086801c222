import { type Remark, TERM } from "@good-grounds/core";
import { concluded } from "../../check.ts";
import { asksQuantity, asksWord, asksYesNo } from "../../need.ts";
import { assessor } from "../assessor.ts";
import { wants, wantsOneOf } from "../verdicts.ts";
import { THERMAL } from "./matters.ts";

/**
 * Whether heat does harm at a piece of equipment or a connection: no marks of heat (421.1, 651.2), connections tight
 * (526.1), material that burns or holds heat kept as far away as the maker asks (421.1.2, 421.1.3, 422.3). Distances in m.
 * Marks show that something has overheated; whether it still does is seen under load.
 */
export const heatCondition = assessor({
  id: "heat-condition",
  provision: "thermal-protection",
  title: "No heat where it does harm",
  formula: "no marks, tight, a ≥ a,min from what burns",
  regulations: ["421.1", "421.1.2", "421.1.3", "526.1", "651.2"],
  needs: {
    marks: asksWord(THERMAL.marks, ["none", "discoloured", "softened", "charred"]),
    connection: asksWord(THERMAL.connection, ["tight", "loose"]),
    burnsNear: asksYesNo(THERMAL.burnsNear),
    clearance: asksQuantity(TERM.clearance, "60 mm; asked where such material lies near"),
    needed: asksQuantity(TERM.neededClearance, "50 mm, from the maker's instructions"),
  },
  conclude({ marks, connection, burnsNear, clearance, needed }, reckon) {
    const judgement = reckon.all(
      THERMAL.sound,
      wantsOneOf(reckon, THERMAL.noMarks, marks, ["none"]),
      wantsOneOf(reckon, THERMAL.tight, connection, ["tight"]),
      reckon.any(
        THERMAL.apart,
        wants(reckon, THERMAL.nothingNear, burnsNear, false),
        reckon.atLeast(THERMAL.distance, clearance, needed),
      ),
    );
    return concluded(judgement, [], judgement.verdict === "not-met" ? [UNDER_LOAD] : []);
  },
  examples: [
    {
      name: "clean and tight",
      given: { marks: "none", connection: "tight", burnsNear: "no" },
      verdict: "met",
      source: "BS 7671 421.1, 526.1",
    },
    {
      name: "loose terminal",
      given: { marks: "none", connection: "loose", burnsNear: "no" },
      verdict: "not-met",
      source: "BS 7671 526.1",
    },
    { name: "charred", given: { marks: "charred" }, verdict: "not-met", source: "BS 7671 421.1" },
    {
      name: "timber nearer than asked",
      given: { marks: "none", connection: "tight", burnsNear: "yes", clearance: "30 mm", needed: "50 mm" },
      verdict: "not-met",
      source: "30 mm is less than 50 mm",
    },
    {
      name: "connections not tried",
      given: { marks: "none", burnsNear: "no" },
      verdict: "not-known",
      missing: ["connection"],
      source: "an input that is missing leaves the judgement open",
    },
  ],
});

const UNDER_LOAD: Remark = Object.freeze({
  code: "look-under-load",
  words:
    "Whether it overheats now is seen under load: a thermal image with the current that flowed, or the cause found while dead.",
});
