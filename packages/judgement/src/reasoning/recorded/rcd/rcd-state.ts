import { rcdWorks } from "@good-grounds/computations";
import { type Fact, fact, factNotKnown, isKnown, isKnownFact, matter, Reckoner } from "@good-grounds/core";
import type { ResidualDevice } from "@good-grounds/inspection";
import type { SpokenOf } from "../../spoken-of/index.ts";
import type { RecordedProperty } from "../property.ts";

const STATES = ["works", "slow", "dead", "not-tested", "cannot-be-tested"] as const;
type State = (typeof STATES)[number];

const STATE = matter("rcd-state", "state of the RCD");

/** The longest time that any RCD in a final circuit may take, in s: one still closed then protects nobody. */
const LONGEST = 1;

/**
 * What the test of the RCD showed, by the one judgement on whether an RCD works: `slow` opened too late, `dead` did not
 * open. A display that ended early leaves slow and dead both possible, a time too near its limit works and slow.
 */
export const rcdState: RecordedProperty = Object.freeze({
  id: "rcd-state",
  name: STATE.name,
  values: STATES,
  read: ({ rcds }: SpokenOf) =>
    rcds.map((rcd) => {
      const values = statesOf(rcd);
      return { of: rcd.path, leaf: leafOf(rcd, values), values };
    }),
});

const RECKON = new Reckoner(false);

function statesOf({ standard, delay, timeAtRated, button }: ResidualDevice): readonly State[] {
  if (!isKnown(timeAtRated)) {
    const isLimited = timeAtRated.kind === "not-known" && timeAtRated.detail.silence === "limited";
    return [isLimited ? "cannot-be-tested" : "not-tested"];
  }
  const { verdict } = rcdWorks({ kind: "rcd-readings", standard, delay, timeAtRated, button }, RECKON);
  if (verdict === "met") return ["works"];
  if (verdict !== "not-met") {
    const isDelayed = isKnownFact(delay) && delay.word !== "general";
    return isDelayed && isKnownFact(button) && button.word === "does-not-trip"
      ? ["works", "slow", "dead"]
      : ["works", "slow"];
  }
  if (timeAtRated.high !== Number.POSITIVE_INFINITY) return ["slow"];
  const isDead = timeAtRated.value >= LONGEST || (isKnownFact(button) && button.word === "does-not-trip");
  return isDead ? ["dead"] : ["slow", "dead"];
}

/** The state as a leaf at the place of the reading it rests on. */
function leafOf({ path, timeAtRated, button }: ResidualDevice, values: readonly State[]): Fact<string> {
  const at = [...path, "readings"];
  if (!isKnown(timeAtRated) && timeAtRated.kind === "not-known") {
    const { silence, reason } = timeAtRated.detail;
    if (silence === "absent") return fact(STATE, "not-tested", at);
    return silence === "limited"
      ? fact(STATE, "cannot-be-tested", at, "cannot-be-tested", "seen", reason)
      : factNotKnown(STATE, at, silence, reason);
  }
  const shown = timeAtRated.kind === "measured" ? timeAtRated.detail.text : "";
  const dead = isKnownFact(button) && button.word === "does-not-trip" ? ", button dead" : "";
  return fact(STATE, values.join(" | "), at, `${values.join(" or ")} (${shown}${dead})`, "measured");
}
