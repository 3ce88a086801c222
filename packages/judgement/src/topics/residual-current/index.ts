import type { Topic } from "../topic.ts";
import { fixedEquipmentNoRcd } from "./fixed-equipment-no-rcd.ts";
import { lightingNoRcd } from "./lighting-no-rcd.ts";
import { mobileOutdoorsNoRcd } from "./mobile-outdoors-no-rcd.ts";
import { rcdDoesNotTrip } from "./rcd-does-not-trip.ts";
import { rcdNeutralsCrossed } from "./rcd-neutrals-crossed.ts";
import { rcdNoneTt } from "./rcd-none-tt.ts";
import { rcdOneWayFedBackwards } from "./rcd-one-way-fed-backwards.ts";
import { rcdSlowAtFiveTimes } from "./rcd-slow-at-five-times.ts";
import { rcdStandingLeakage } from "./rcd-standing-leakage.ts";
import { rcdTestNotPossible } from "./rcd-test-not-possible.ts";
import { rcdTimeDelayMissing } from "./rcd-time-delay-missing.ts";
import { rcdTooSensitive } from "./rcd-too-sensitive.ts";
import { rcdTypeAc } from "./rcd-type-ac.ts";
import { socketsNoRcd } from "./sockets-no-rcd.ts";
import { voltageOperatedBreaker } from "./voltage-operated-breaker.ts";

export const RESIDUAL_CURRENT: readonly Topic[] = Object.freeze([
  rcdNoneTt,
  voltageOperatedBreaker,
  rcdDoesNotTrip,
  rcdTestNotPossible,
  rcdSlowAtFiveTimes,
  rcdTooSensitive,
  rcdStandingLeakage,
  rcdTimeDelayMissing,
  rcdTypeAc,
  rcdOneWayFedBackwards,
  rcdNeutralsCrossed,
  socketsNoRcd,
  mobileOutdoorsNoRcd,
  lightingNoRcd,
  fixedEquipmentNoRcd,
]);
