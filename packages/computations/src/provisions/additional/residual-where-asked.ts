import {
  type Fact,
  isKnownFact,
  type Judgement,
  PREMISES_USES,
  published,
  RCD_DELAYS,
  type Reckoner,
  type Remark,
  TERM,
} from "@good-grounds/core";
import { MATTER } from "@good-grounds/inspection";
import { additionalProtectionCurrent, RCD_PLACES, type RcdPlace, rcdAsked, source } from "@good-grounds/tables";
import { concluded } from "../../check.ts";
import { RCD_TESTED, rcdWorks } from "../../circuits/rcd-test.ts";
import { ASKED, QUESTION } from "../../matters.ts";
import { asksQuantity, asksWord, asksYesNo, type Given } from "../../need.ts";
import { assessor } from "../assessor.ts";
import { wants, wantsOneOf } from "../verdicts.ts";
import { ADDITIONAL } from "./matters.ts";

const needs = {
  place: asksWord(ADDITIONAL.place, RCD_PLACES),
  use: asksWord(ASKED.use, PREMISES_USES),
  riskAssessed: asksYesNo(ADDITIONAL.riskAssessed, "socket-outlets outside dwellings"),
  skilledOnly: asksYesNo(ADDITIONAL.skilledOnly, "socket-outlets outside dwellings"),
  depth: asksQuantity(TERM.depthInWall, "20 mm; cables in walls"),
  mechanicallyProtected: asksYesNo(
    MATTER.mechanicallyProtected,
    "cables in walls: earthed covering or mechanical protection",
  ),
  rcd: asksYesNo(MATTER.rcdPresent),
  residual: asksQuantity(TERM.residualOperatingCurrent, "30 mA"),
  delay: asksWord(MATTER.rcdDelay, RCD_DELAYS),
  rcdTest: asksWord(ASKED.rcdTested, RCD_TESTED),
};

type GivenHere = Given<typeof needs>;

const SOCKET_BEHIND_30_MA = {
  place: "socket-outlet-up-to-32A",
  use: "dwelling",
  rcd: "yes",
  residual: "30 mA",
  delay: "general",
} as const;

/** Depth in m from which a cable in an ordinary wall needs neither RCD nor covering. */
const DEEP = published(
  TERM.depthInWall,
  0.05,
  source("BS 7671 522.6.202", "2008 to 2018+A4", "published"),
  "depth in a wall",
);

const HOMES: readonly string[] = ["dwelling", "house-in-multiple-occupation"];

/**
 * Additional protection by an RCD of at most 30 mA, without delay and found to work (415.1.1), by location and use: sockets, equipment outdoors, lighting
 * in homes, cables in walls, rooms with a bath or shower, and the special locations. Not asked, and so not applicable:
 * cables 50 mm deep or with earthed or mechanical covering, lighting outside homes, socket-outlets outside dwellings
 * left out on a documented risk assessment and used by skilled or instructed persons only. Both editions carried here
 * ask the same. Current in A, depth in m. Not asked by an earlier edition does not make a departure dangerous, and
 * additional protection never stands in place of another measure (415.1.2).
 */
export const residualWhereAsked = assessor({
  id: "residual-where-asked",
  provision: "additional-protection",
  title: "RCD of at most 30 mA by location and use",
  formula: "IΔn ≤ 30 mA, no delay, in time, where the location or use asks it",
  regulations: ["411.3.3", "411.3.4", "415.1.1", "522.6.202", "522.6.203", "701.411.3.3", "722.531.3"],
  needs,
  conclude(given, reckon) {
    const { place } = given;
    if (!isKnownFact(place)) return concluded(reckon.settled(ADDITIONAL.holds, "not-known", "", place));
    const row = rcdAsked(place.word);
    const present = rcdOf(given, reckon);
    const notAsked = notAskedHere(place, given, reckon);
    if (notAsked?.verdict === "met") {
      return concluded(reckon.settled(ADDITIONAL.holds, "not-applicable", "not asked here", notAsked));
    }
    const judgement = notAsked === undefined ? present : reckon.any(ADDITIONAL.holds, present, notAsked);
    return concluded(judgement, [], [asks(row), ...(judgement.verdict === "not-met" ? [since(row)] : [])]);
  },
  examples: [
    {
      name: "socket-outlet in a home",
      given: { ...SOCKET_BEHIND_30_MA, rcdTest: "in-time" },
      verdict: "met",
      source: "BS 7671 411.3.3, 415.1.1",
    },
    {
      name: "socket-outlet in a home behind an RCD that opens too late",
      given: { ...SOCKET_BEHIND_30_MA, rcdTest: "too-slow" },
      verdict: "not-met",
      source: "BS 7671 415.1.1, 643.8: the RCD failed its test",
    },
    {
      name: "socket-outlet in a home behind a dead RCD",
      given: { ...SOCKET_BEHIND_30_MA, rcdTest: "does-not-operate" },
      verdict: "not-met",
      source: "BS 7671 415.1.1, 643.8: the RCD failed its test",
    },
    {
      name: "socket-outlet in a home behind an RCD that was not tested",
      given: SOCKET_BEHIND_30_MA,
      verdict: "not-known",
      missing: ["rcd-tested"],
      source: "nothing shows that the RCD works",
    },
    {
      name: "socket-outlet in a home without",
      given: { place: "socket-outlet-up-to-32A", use: "dwelling", rcd: "no", riskAssessed: "yes", skilledOnly: "yes" },
      verdict: "not-met",
      source: "BS 7671 411.3.3: no leaving out in dwellings",
    },
    {
      name: "cable 50 mm deep",
      given: { place: "cable-in-wall", depth: "50 mm", rcd: "no", mechanicallyProtected: "no" },
      verdict: "not-applicable",
      source: "BS 7671 522.6.202: asked below 50 mm",
    },
    {
      name: "cable 20 mm deep behind 100 mA",
      given: { place: "cable-in-wall", depth: "20 mm", rcd: "yes", residual: "100 mA", mechanicallyProtected: "no" },
      verdict: "not-met",
      source: "BS 7671 522.6.202, 415.1.1",
    },
    {
      name: "lighting, use not known",
      given: { place: "luminaires-in-dwelling", rcd: "no" },
      verdict: "not-known",
      missing: ["use"],
      source: "an input that is missing leaves the judgement open",
    },
  ],
});

function rcdOf({ rcd, residual, delay, rcdTest }: GivenHere, reckon: Reckoner): Judgement {
  if (isKnownFact(rcd) && !rcd.word) return wants(reckon, ADDITIONAL.present, rcd);
  return reckon.all(
    ADDITIONAL.present,
    wants(reckon, ADDITIONAL.present, rcd),
    reckon.atMost(ADDITIONAL.sensitivity, residual, additionalProtectionCurrent),
    wantsOneOf(reckon, QUESTION.rcdUndelayed, delay, ["general"]),
    rcdWorks(rcdTest, reckon),
  );
}

/** Whether the place asks nothing in this case; undefined where it always asks. */
function notAskedHere(place: Fact<RcdPlace>, given: GivenHere, reckon: Reckoner): Judgement | undefined {
  if (!isKnownFact(place)) return undefined;
  const { use, riskAssessed, skilledOnly, depth, mechanicallyProtected } = given;
  switch (place.word) {
    case "socket-outlet-up-to-32A":
      return reckon.all(
        ADDITIONAL.notAsked,
        reckon.byWord(ASKED.use, use, (word) => (HOMES.includes(word) ? "not-met" : "met")),
        wants(reckon, ADDITIONAL.riskAssessed, riskAssessed),
        wants(reckon, ADDITIONAL.skilledOnly, skilledOnly),
      );
    case "luminaires-in-dwelling":
      return reckon.byWord(ADDITIONAL.notAsked, use, (word) => (HOMES.includes(word) ? "not-met" : "met"));
    case "cable-in-wall":
      return reckon.any(
        ADDITIONAL.notAsked,
        wants(reckon, MATTER.mechanicallyProtected, mechanicallyProtected),
        reckon.atLeast(ADDITIONAL.deep, depth, DEEP),
      );
    case "cable-in-wall-with-metal-parts":
      return wants(reckon, ADDITIONAL.notAsked, mechanicallyProtected);
    default:
      return undefined;
  }
}

function asks({ regulation, asks }: ReturnType<typeof rcdAsked>): Remark {
  return { code: "residual-asked-by", words: `Asked by ${regulation}: ${asks}.` };
}

function since(row: ReturnType<typeof rcdAsked>): Remark {
  return {
    code: "departure-from-today",
    words: `A departure from today's edition (asked since: ${row.since}). Whether it endangers anyone depends on who uses it, where and how.`,
  };
}
