import {
  type DeviceStandard,
  type Evidence,
  expected,
  type Fact,
  fact,
  isKnown,
  isKnownFact,
  isOpen,
  type Judgement,
  type Reckoner,
  TERM,
} from "@good-grounds/core";
import { MATTER } from "@good-grounds/inspection";
import { permittedRcdTime } from "@good-grounds/tables";
import { QUESTION } from "../../matters.ts";
import { rcdWorks } from "../rcd-test.ts";
import { devicesOf, type ResidualAnswers, type ResidualBefore } from "../residual-devices.ts";
import { sizeFor, type Withstanding } from "./large-enough.ts";

/** Whether a conductor is large enough for what flows until one of the RCDs before it, which works, has opened. */
export function untilRcdsOpen(
  given: ResidualAnswers & { readonly standard: Fact<DeviceStandard> },
  near: Evidence<"ampere">,
  conductor: Withstanding,
  reckon: Reckoner,
): Judgement {
  const { rcd, standard } = given;
  const behindWire = isKnownFact(standard) && standard.word === "BS 3036";
  if (!isKnownFact(rcd)) return reckon.settled(QUESTION.cpcByRcd, "not-known", "", rcd);
  if (!rcd.word) return reckon.settled(QUESTION.cpcByRcd, "not-applicable", "no RCD", rcd);
  const parts = devicesOf(given).map((device) =>
    reckon.all(
      QUESTION.cpcByRcd,
      untilOpen(device, near, conductor, behindWire, reckon),
      rcdWorks(device.test, reckon),
    ),
  );
  const [only] = parts;
  return only !== undefined && parts.length === 1 ? only : reckon.any(QUESTION.cpcByRcd, ...parts);
}

/**
 * An RCD that works opens at the latest in the time of its standard; the energy until then is an upper limit. Without
 * delay no standard allows more than BS EN 61008; with one it has to be a standard that bounds the delay. Where it was
 * measured at 5 IΔn and found slower than that, the time measured counts. Behind a semi-enclosed fuse, beside
 * which no RCD has a release that limits the current, at least one half-wave passes.
 */
function untilOpen(
  { residual, standard: marked, delay, timeAtFive }: ResidualBefore,
  near: Evidence<"ampere">,
  { area, k }: Withstanding,
  behindWire: boolean,
  reckon: Reckoner,
): Judgement {
  const fast = isKnown(near) && isKnown(residual) && near.low >= 5 * residual.high;
  const undelayed = isKnownFact(delay) && delay.word === "general";
  const standard = undelayed ? UNDELAYED : marked;
  const time =
    isKnown(residual) && isKnownFact(delay) && isKnownFact(standard)
      ? permittedRcdTime({ standard: standard.word, delay: delay.word, multiple: fast ? 5 : 1 }).max
      : undefined;
  const permitted = reckon.lookedUp(TERM.permittedRcdTime, time, delay, residual, standard);
  const latest = fast && isKnown(timeAtFive) ? reckon.largest(TERM.operatingTime, permitted, timeAtFive) : permitted;
  const until = reckon.letThrough(TERM.letThrough, near, latest);
  const most = reckon.atMostOf(TERM.letThrough, until);
  const proven = reckon.atLeast(QUESTION.cpcUntilRcdOpens, area, sizeFor(most, k, reckon));
  if (!behindWire || proven.verdict !== "too-near") return proven;
  const bounded = reckon.between(TERM.letThrough, reckon.letThrough(TERM.letThrough, near, HALF_WAVE), until);
  const likely = reckon.atLeast(QUESTION.cpcUntilRcdOpens, area, sizeFor(bounded, k, reckon), "expected");
  return isOpen(likely.verdict) ? proven : likely;
}

/** A residual device without overcurrent release parts a current at its next nought, not before. */
const HALF_WAVE = expected(
  TERM.operatingTime,
  0.01,
  "one half-wave of 50 Hz passes before any RCD has parted it, where the fault begins as the voltage passes nought",
  [0.01, 0.01],
);

const UNDELAYED = fact(MATTER.rcdStandard, "BS EN 61008", [], "without delay no standard allows more", "published");
