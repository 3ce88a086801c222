import type { Topic } from "../topic.ts";
import { borrowedNeutral } from "./borrowed-neutral.ts";
import { circuitUnidentified } from "./circuit-unidentified.ts";
import { circuitsMixed } from "./circuits-mixed.ts";
import { cpcResistanceHigh } from "./cpc-resistance-high.ts";
import { cpcUndersized } from "./cpc-undersized.ts";
import { insulationFalling } from "./insulation-falling.ts";
import { insulationLow } from "./insulation-low.ts";
import { lightingNoCpc } from "./lighting-no-cpc.ts";
import { liveConductorsUnterminated } from "./live-conductors-unterminated.ts";
import { metalworkLive } from "./metalwork-live.ts";
import { neutralSwitchedOrFused } from "./neutral-switched-or-fused.ts";
import { overloadDeviceOversize } from "./overload-device-oversize.ts";
import { phaseSequence } from "./phase-sequence.ts";
import { polarityReversedAtPoint } from "./polarity-reversed-at-point.ts";
import { ringBroken } from "./ring-broken.ts";
import { ringInterconnected } from "./ring-interconnected.ts";
import { socketNoCpc } from "./socket-no-cpc.ts";
import { spurOverloaded } from "./spur-overloaded.ts";
import { voltageDropHigh } from "./voltage-drop-high.ts";
import { zsOverLimit } from "./zs-over-limit.ts";

export const CIRCUITS: readonly Topic[] = Object.freeze([
  circuitUnidentified,
  circuitsMixed,
  borrowedNeutral,
  overloadDeviceOversize,
  voltageDropHigh,
  ringBroken,
  ringInterconnected,
  spurOverloaded,
  zsOverLimit,
  cpcUndersized,
  cpcResistanceHigh,
  socketNoCpc,
  lightingNoCpc,
  metalworkLive,
  insulationLow,
  insulationFalling,
  polarityReversedAtPoint,
  phaseSequence,
  neutralSwitchedOrFused,
  liveConductorsUnterminated,
]);
