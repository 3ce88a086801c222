import {
  type Evidence,
  type Fact,
  fact,
  factNotKnown,
  isKnownFact,
  notKnown,
  RCD_DELAYS,
  RCD_STANDARDS,
  type RcdDelay,
  type RcdStandard,
  TERM,
} from "@good-grounds/core";
import { type Circuit, MATTER, type ResidualDevice } from "@good-grounds/inspection";
import { ASKED } from "../matters.ts";
import { asksQuantities, asksRcdTests, asksWords, asksYesNo } from "../need.ts";
import { delayShown, type RcdTest } from "./rcd-test.ts";

/** One RCD before a circuit, as the questions that lean on one need it. */
export interface ResidualBefore {
  readonly residual: Evidence<"ampere">;
  readonly standard: Fact<RcdStandard>;
  readonly delay: Fact<RcdDelay>;
  readonly timeAtFive: Evidence<"second">;
  readonly test: RcdTest;
}

/** What is asked about the RCDs before a circuit. Lists run from the circuit towards the origin, one entry a device. */
export const residualNeeds = Object.freeze({
  rcd: asksYesNo(MATTER.rcdPresent),
  residual: asksQuantities(TERM.residualOperatingCurrent, "30 mA; of several in series the one at the circuit first"),
  rcdTest: asksRcdTests(ASKED.rcdTested, "of several in the same order"),
});

/** The delay of each of those RCDs. */
export const delayNeed = asksWords(MATTER.rcdDelay, RCD_DELAYS);

/** The product standard of each of those RCDs. */
export const rcdStandardNeed = asksWords(MATTER.rcdStandard, RCD_STANDARDS);

/** The RCDs before a circuit, the one nearest to it first, and whether there is any. */
export interface ResidualsBefore {
  readonly present: Fact<boolean>;
  readonly devices: readonly ResidualBefore[];
}

/**
 * Every RCD in the circuit, in its board, and ahead of the circuits that feed its board, in the way of its current from
 * the circuit to the origin. Known to be absent only where every step says so. A step that was not looked at stands as
 * a device of which nothing is known.
 */
export function residualsBefore(circuit: Circuit): ResidualsBefore {
  let open: Fact<boolean> | undefined;
  let there: Fact<boolean> | undefined;
  const devices: ResidualBefore[] = [];
  for (let at: Circuit | undefined = circuit; at !== undefined; at = at.board.feeder) {
    const { present, devices: here, unseen } = at.residual;
    if (here.length > 0 || unseen !== undefined) there ??= present;
    if (unseen !== undefined) devices.push(notLookedAt(unseen.detail));
    if (!isKnownFact(present)) {
      open ??= present;
      devices.push(notLookedAt(present.detail));
    }
    for (const device of here) devices.push(beforeOf(device));
    const { atOrigin } = at.board;
    if (isKnownFact(atOrigin)) continue;
    open ??= factNotKnown(MATTER.rcdPresent, atOrigin.detail.path);
    devices.push(notLookedAt(atOrigin.detail));
  }
  if (there !== undefined) return { present: there, devices };
  return { present: open ?? circuit.residual.present, devices: [] };
}

function beforeOf(rcd: ResidualDevice): ResidualBefore {
  const { standard, timeAtRated, timeAtFive, residual, button } = rcd;
  const delay = delayShown(rcd.delay, timeAtRated, (why) =>
    fact(MATTER.rcdDelay, "general", [...rcd.path, "delay"], "general", "assumed", why),
  );
  return {
    residual,
    standard,
    delay,
    timeAtFive,
    test: { kind: "rcd-readings", standard, delay, timeAtRated, button },
  };
}

function notLookedAt({ path, silence, reason }: Extract<Fact<boolean>, { kind: "fact-not-known" }>["detail"]) {
  return {
    residual: notKnown(TERM.residualOperatingCurrent, path, silence, reason),
    standard: factNotKnown(MATTER.rcdStandard, path, silence, reason),
    delay: factNotKnown(MATTER.rcdDelay, path, silence, reason),
    timeAtFive: notKnown(TERM.rcdTimeFive, path, silence, reason),
    test: factNotKnown(MATTER.rcdPresent, path, silence, reason),
  };
}

/** The same as the answers to {@link residualNeeds} and its companions. */
export function asAnswers({ present, devices }: ResidualsBefore) {
  return {
    rcd: present,
    residual: devices.map(({ residual }) => residual),
    rcdTest: devices.map(({ test }) => test),
    delay: devices.map(({ delay }) => delay),
    rcdStandard: devices.map(({ standard }) => standard),
    rcdFive: devices.map(({ timeAtFive }) => timeAtFive),
  };
}

/** Answers to {@link residualNeeds} and its companions. */
export interface ResidualAnswers {
  readonly rcd: Fact<boolean>;
  readonly residual: readonly Evidence<"ampere">[];
  readonly rcdTest: readonly RcdTest[];
  readonly delay?: readonly Fact<RcdDelay>[];
  readonly rcdStandard?: readonly Fact<RcdStandard>[];
  readonly rcdFive?: readonly Evidence<"second">[];
}

/** The devices that answers speak of, at least one; what was not said of one is not known. */
export function devicesOf(answers: Omit<ResidualAnswers, "rcd">): readonly ResidualBefore[] {
  const { residual, rcdTest, delay = [], rcdStandard = [], rcdFive = [] } = answers;
  const count = Math.max(1, residual.length, rcdTest.length, delay.length, rcdStandard.length, rcdFive.length);
  return Array.from({ length: count }, (_, i) => ({
    residual: residual[i] ?? NO_CURRENT,
    standard: rcdStandard[i] ?? NO_STANDARD,
    delay: delay[i] ?? NO_DELAY,
    timeAtFive: rcdFive[i] ?? NO_TIME,
    test: rcdTest[i] ?? NO_TEST,
  }));
}

const NO_CURRENT = notKnown(TERM.residualOperatingCurrent, ["residual"]);
const NO_STANDARD = factNotKnown(MATTER.rcdStandard, ["rcdStandard"]);
const NO_DELAY = factNotKnown(MATTER.rcdDelay, ["delay"]);
const NO_TIME = notKnown(TERM.rcdTimeFive, ["rcdFive"]);
const NO_TEST = factNotKnown(ASKED.rcdTested, ["rcdTest"]);
