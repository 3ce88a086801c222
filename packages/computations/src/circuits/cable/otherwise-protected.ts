import {
  type CircuitLoad,
  type Evidence,
  type Fact,
  isKnown,
  isKnownFact,
  type Judgement,
  type Reckoner,
  type Remark,
} from "@good-grounds/core";
import { QUESTION } from "../../matters.ts";

/** What a load says of the protection of its cable. */
export interface Loaded {
  readonly load: Fact<CircuitLoad>;
  readonly designCurrent: Evidence<"ampere">;
  readonly overloadRelay: Fact<boolean>;
}

/** Loads whose current their own design limits; they need no overload protection of their cable. */
const CANNOT_OVERLOAD: ReadonlySet<CircuitLoad> = new Set(["shower", "water-heater", "storage-heating", "heating"]);

/** What can protect the cable, or make protection needless, where the device at its origin does not. */
export function otherwiseProtected(
  { load, designCurrent, overloadRelay }: Loaded,
  capacity: Evidence<"ampere">,
  reckon: Reckoner,
): readonly Judgement[] {
  if (!isKnownFact(load)) return [];
  const within = () => reckon.atMost(QUESTION.loadWithinCable, designCurrent, capacity);
  if (load.word === "motor") {
    const relay = reckon.byWord(QUESTION.relayProtects, overloadRelay, (set) => (set ? "met" : "not-met"));
    return [reckon.all(QUESTION.relayProtects, within(), relay)];
  }
  return CANNOT_OVERLOAD.has(load.word) && isKnown(designCurrent) ? [within()] : [];
}

/** Says where only the relay of a motor is left to protect the cable. */
export function restsOnRelay({ load }: Pick<Loaded, "load">, protects: Judgement): readonly Remark[] {
  return isKnownFact(load) && load.word === "motor" && protects.verdict === "not-met" ? [RELAY] : [];
}

const RELAY: Remark = Object.freeze({
  code: "rests-on-overload-relay",
  words:
    "The device is rated above what the cable carries, as one chosen for the start of a motor may be. Only an overload relay in the starter protects the cable: look at its setting.",
});
