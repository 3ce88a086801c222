import { EARTHING_SYSTEMS, isKnownFact, type Judgement, type Reckoner } from "@good-grounds/core";
import { MATTER } from "@good-grounds/inspection";
import { concluded } from "../../check.ts";
import { asksWord, asksYesNo, type Given } from "../../need.ts";
import { assessor } from "../assessor.ts";
import { wants, wantsOneOf } from "../verdicts.ts";
import { ISOLATION } from "./matters.ts";

const needs = {
  mainPresent: asksYesNo(ISOLATION.mainPresent),
  poles: asksWord(ISOLATION.poles, ["one-line-only", "all-lines", "all-lines-and-neutral"]),
  phases: asksWord(MATTER.phases, ["1", "3"]),
  system: asksWord(MATTER.earthingSystem, EARTHING_SYSTEMS),
  ordinary: asksYesNo(ISOLATION.ordinary),
  suitable: asksYesNo(ISOLATION.suitable, "Table 537.4"),
  kept: asksYesNo(ISOLATION.kept),
  otherSource: asksYesNo(ISOLATION.otherSource),
  otherIsolated: asksYesNo(ISOLATION.otherIsolated),
  notice: asksYesNo(ISOLATION.notice),
};

/**
 * Whether every supply can be isolated (462.1): a main switch or circuit-breaker near the origin (462.1.201) that opens
 * all lines, and the neutral as well where the system is TT or IT, or where ordinary persons operate a single-phase one;
 * a device that serves for isolation (537.2, Table 537.4); means to keep it open (462.3); every further source with its
 * own means and a notice (514.15.1, 551). In a three-phase TN system the neutral may stay closed (461.2).
 */
export const isolationMeans = assessor({
  id: "isolation-means",
  provision: "isolation",
  title: "Every supply can be isolated",
  formula: "main switch, enough poles, made for it, kept open, other sources too",
  regulations: ["461.2", "462.1", "462.1.201", "462.3", "514.15.1", "537.2"],
  needs,
  conclude(given, reckon) {
    const { mainPresent, suitable, kept } = given;
    return concluded(
      reckon.all(
        ISOLATION.holds,
        wants(reckon, ISOLATION.mainPresent, mainPresent),
        polesEnough(given, reckon),
        wants(reckon, ISOLATION.suitable, suitable),
        wants(reckon, ISOLATION.kept, kept),
        others(given, reckon),
      ),
    );
  },
  examples: [
    {
      name: "double-pole main switch in a home",
      given: { ...home(), poles: "all-lines-and-neutral" },
      verdict: "met",
      source: "BS 7671 462.1.201",
    },
    {
      name: "main switch breaks the line only",
      given: { ...home(), poles: "one-line-only" },
      verdict: "not-met",
      source: "BS 7671 462.1.201: both poles for single-phase use by ordinary persons",
    },
    {
      name: "three-phase TN, neutral stays closed",
      given: { ...home(), phases: "3", poles: "all-lines", ordinary: "no" },
      verdict: "met",
      source: "BS 7671 461.2",
    },
    {
      name: "three-phase TT, neutral stays closed",
      given: { ...home(), phases: "3", system: "TT", poles: "all-lines", ordinary: "no" },
      verdict: "not-met",
      source: "BS 7671 461.2: the exception is for TN",
    },
    {
      name: "battery without its own isolator",
      given: { ...home(), poles: "all-lines-and-neutral", otherSource: "yes", otherIsolated: "no", notice: "no" },
      verdict: "not-met",
      source: "BS 7671 462.1, 514.15.1",
    },
    {
      name: "other sources not looked for",
      given: { mainPresent: "yes", poles: "all-lines-and-neutral", suitable: "yes", kept: "yes" },
      verdict: "not-known",
      missing: ["other-source"],
      source: "an input that is missing leaves the judgement open",
    },
  ],
});

function home() {
  return {
    mainPresent: "yes",
    phases: "1",
    system: "TN-C-S",
    ordinary: "yes",
    suitable: "yes",
    kept: "yes",
    otherSource: "no",
  } as const;
}

function polesEnough({ poles, phases, system, ordinary }: Given<typeof needs>, reckon: Reckoner): Judgement {
  if (!isKnownFact(poles)) return reckon.settled(ISOLATION.polesEnough, "not-known", "", poles);
  if (poles.word === "all-lines-and-neutral") return reckon.settled(ISOLATION.polesEnough, "met", "", poles);
  const allLines =
    poles.word === "all-lines"
      ? reckon.settled(ISOLATION.poles, "met", "", poles)
      : wantsOneOf(reckon, ISOLATION.poles, phases, ["1"], "one line is all there is");
  const neutralMayStay = reckon.all(
    ISOLATION.polesEnough,
    wantsOneOf(reckon, MATTER.earthingSystem, system, ["TN-S", "TN-C-S"]),
    reckon.any(
      ISOLATION.neutralMayStay,
      wants(reckon, ISOLATION.notOrdinary, ordinary, false),
      wantsOneOf(reckon, MATTER.phases, phases, ["3"]),
    ),
  );
  return reckon.all(ISOLATION.polesEnough, allLines, neutralMayStay);
}

function others({ otherSource, otherIsolated, notice }: Given<typeof needs>, reckon: Reckoner): Judgement {
  return reckon.any(
    ISOLATION.others,
    wants(reckon, ISOLATION.noOther, otherSource, false),
    reckon.all(
      ISOLATION.others,
      wants(reckon, ISOLATION.otherIsolated, otherIsolated),
      wants(reckon, ISOLATION.notice, notice),
    ),
  );
}
