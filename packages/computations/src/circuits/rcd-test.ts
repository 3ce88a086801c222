import {
  assumed,
  type Evidence,
  type Fact,
  isKnown,
  isKnownFact,
  type Judgement,
  type Matter,
  type RcdDelay,
  type RcdStandard,
  type Reckoner,
  type Remark,
  TERM,
} from "@good-grounds/core";
import { permittedRcdTime, source } from "@good-grounds/tables";
import { QUESTION } from "../matters.ts";

/** What a test of an RCD shows, in one word: it opened in time, it opened too late, it did not open at all. */
export const RCD_TESTED = ["in-time", "too-slow", "does-not-operate"] as const;
export type RcdTested = (typeof RCD_TESTED)[number];

/** What the test of one RCD rests on in an inspection: its marks, its time at IΔn in s and its button. */
interface RcdReadings {
  readonly kind: "rcd-readings";
  readonly standard: Fact<RcdStandard>;
  readonly delay: Fact<RcdDelay>;
  readonly timeAtRated: Evidence<"second">;
  readonly button: Fact<"trips" | "does-not-trip">;
}

/** The test of one RCD: stated in one word, or its readings. */
export type RcdTest = RcdReadings | Fact<RcdTested>;

/**
 * Whether an RCD was found to work: the one judgement that everything which leans on an RCD rests on.
 *
 * Met: at IΔn it opened within the limit of its standard and delay. Not met: it opened later, or not before the test
 * ended. Not known: no time was taken, also where its button is dead, since a button tries a part of the device only.
 * Two things leave the protection of people as it is and are told by the check `rcd-time`: a dead button on a device
 * without delay that opened in time, for the test current went through the sensing and tripping parts that a fault uses;
 * and a delayed device that opened too soon, for it costs selectivity and not time. A delayed device with a dead button is
 * not shown to work: it stands ahead of others, nothing behind it disconnects what it should, and two tests of it differ.
 *
 * Where the standard or the delay was not recorded, a time that is good by every one of them is good, and one that is
 * beyond the longest they allow is not.
 */
export function rcdWorks(test: RcdTest, reckon: Reckoner): Judgement {
  if (test.kind !== "rcd-readings")
    return reckon.byWord(QUESTION.rcdWorks, test, (word) => (word === "in-time" ? "met" : "not-met"));
  const { delay, timeAtRated, button } = test;
  if (!isKnown(timeAtRated)) {
    return isDead(button)
      ? reckon.settled(QUESTION.rcdWorks, "not-known", "its button is dead and no time was taken", timeAtRated, button)
      : reckon.settled(QUESTION.rcdWorks, "not-known", "not shown to work", timeAtRated);
  }
  const inTime = timed(test, timeAtRated, reckon);
  if (inTime.verdict !== "met" || !isDead(button) || !isKnownFact(delay) || delay.word === "general") return inTime;
  const why = "it is delayed, it opened in time, and its button is dead";
  return reckon.settled(QUESTION.rcdWorks, "not-known", why, timeAtRated, button, delay);
}

function isDead(button: RcdReadings["button"]): boolean {
  return isKnownFact(button) && button.word === "does-not-trip";
}

/** By its time alone. */
function timed({ standard, delay }: RcdReadings, timeAtRated: Evidence<"second">, reckon: Reckoner): Judgement {
  const most = permittedAtRated(standard, delay, reckon);
  if (isKnown(most)) return opensWithin(QUESTION.rcdWorks, timeAtRated, most, reckon);
  const soon = opensWithin(QUESTION.rcdWorks, timeAtRated, GOOD_BY_ALL, reckon);
  if (soon.verdict === "met") return soon;
  const late = opensWithin(QUESTION.rcdWorks, timeAtRated, longestFor(standard, delay), reckon);
  if (late.verdict === "not-met") return late;
  return reckon.settled(QUESTION.rcdWorks, "not-known", "its limit is not known", timeAtRated, most);
}

/**
 * Holds the operating time of an RCD against the longest permitted, both in s. A display that ended (">300 ms") means
 * that the device was still closed then, so one that ended at the limit is beyond it.
 */
export function opensWithin(
  about: Matter,
  time: Evidence<"second">,
  limit: Evidence<"second">,
  reckon: Reckoner,
): Judgement {
  const stillClosed = isKnown(time) && isKnown(limit) && time.high === Number.POSITIVE_INFINITY;
  if (stillClosed && time.value >= limit.high)
    return reckon.settled(about, "not-met", "it had not opened when the test ended", time, limit);
  return reckon.atMost(about, time, limit);
}

/** What a reader is told of RCDs in series none of which was found to work; undefined where one was. */
export function whyNotCounted(tests: readonly RcdTest[], reckon: Reckoner): Remark | undefined {
  const verdicts = tests.map((test) => rcdWorks(test, reckon).verdict);
  if (verdicts.includes("met")) return undefined;
  return verdicts.every((verdict) => verdict === "not-met") ? FAILED : NOT_SHOWN;
}

/** The delay as marked; without a mark, a device that opened sooner than any delayed one may has none. */
export function delayShown(
  delay: Fact<RcdDelay>,
  timeAtRated: Evidence<"second">,
  none: (why: string) => Fact<RcdDelay>,
): Fact<RcdDelay> {
  if (isKnownFact(delay) || !isKnown(timeAtRated) || timeAtRated.high > GOOD_BY_ALL.value) return delay;
  return none("it opened sooner than a delayed device may");
}

function permittedAtRated(standard: Fact<RcdStandard>, delay: Fact<RcdDelay>, reckon: Reckoner): Evidence<"second"> {
  const limits =
    isKnownFact(standard) && isKnownFact(delay)
      ? permittedRcdTime({ standard: standard.word, delay: delay.word, multiple: 1 })
      : undefined;
  return reckon.lookedUp(TERM.permittedRcdTime, limits?.max, standard, delay);
}

/** The longest time at IΔn that the known marks can still allow. */
function longestFor(standard: Fact<RcdStandard>, delay: Fact<RcdDelay>): Evidence<"second"> {
  if (isKnownFact(delay) && delay.word === "general") return LONGEST_UNDELAYED;
  const bounded = isKnownFact(standard) && standard.word !== "BS 4293" && standard.word !== "BS EN 60947-2";
  return bounded && !isKnownFact(delay) ? LONGEST_TYPE_S : LONGEST_SET;
}

const FAILED: Remark = Object.freeze({
  code: "rcd-failed",
  words: "There is an RCD, and it failed its test: it does not count.",
});

const NOT_SHOWN: Remark = Object.freeze({
  code: "rcd-not-shown",
  words: "There is an RCD, and nothing shows that it works: it does not count until it passes its test.",
});

const EN = source("BS EN 61008-1 and BS EN 61009-1", "current", "published");

const GOOD_BY_ALL = assumed(
  TERM.permittedRcdTime,
  0.13,
  "standard or delay not recorded: in time by every standard, and sooner than a delayed device may open",
  undefined,
  EN,
);
const LONGEST_UNDELAYED = assumed(
  TERM.permittedRcdTime,
  0.3,
  "standard not recorded: no standard allows an RCD without delay more",
  undefined,
  EN,
);
const LONGEST_TYPE_S = assumed(
  TERM.permittedRcdTime,
  0.5,
  "delay not recorded: the standard allows no RCD more, with or without",
  undefined,
  EN,
);
const LONGEST_SET = assumed(
  TERM.permittedRcdTime,
  1,
  "delay set on the device not recorded: no circuit on TT may stay live longer",
  undefined,
  source("BS 7671 411.3.2.4", "2018+A2 and later", "published"),
);
