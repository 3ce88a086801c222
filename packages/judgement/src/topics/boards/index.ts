import type { Topic } from "../topic.ts";
import { arcDetectionAbsent } from "./arc-detection-absent.ts";
import { basicProtection } from "./basic-protection.ts";
import { boardBlankMissing } from "./board-blank-missing.ts";
import { boardCableEntry } from "./board-cable-entry.ts";
import { boardCombustible } from "./board-combustible.ts";
import { boardConductorOrder } from "./board-conductor-order.ts";
import { boardCoverMissing } from "./board-cover-missing.ts";
import { boardDamp } from "./board-damp.ts";
import { boardFixing } from "./board-fixing.ts";
import { boardInnerShield } from "./board-inner-shield.ts";
import { boardOverheating } from "./board-overheating.ts";
import { boardPosition } from "./board-position.ts";
import { boardTerminations } from "./board-terminations.ts";
import { boardThingsStored } from "./board-things-stored.ts";
import { boardTopOpening } from "./board-top-opening.ts";
import { breakingCapacityExceeded } from "./breaking-capacity-exceeded.ts";
import { deviceFaulty } from "./device-faulty.ts";
import { fuseCarrierBroken } from "./fuse-carrier-broken.ts";
import { fuseWireOversize } from "./fuse-wire-oversize.ts";
import { isolationIncomplete } from "./isolation-incomplete.ts";
import { livePartsOutOfReach } from "./live-parts-out-of-reach.ts";
import { mainSwitchMissingOrFaulty } from "./main-switch-missing-or-faulty.ts";
import { mainSwitchPoles } from "./main-switch-poles.ts";
import { maximumDemandExceeded } from "./maximum-demand-exceeded.ts";
import { mixedDevices } from "./mixed-devices.ts";
import { neutralFused } from "./neutral-fused.ts";
import { oldWoodenBoard } from "./old-wooden-board.ts";
import { rewirableFuses } from "./rewirable-fuses.ts";
import { selectivityLacking } from "./selectivity-lacking.ts";
import { supplyDivision } from "./supply-division.ts";
import { surgeProtectionAbsent } from "./surge-protection-absent.ts";
import { surgeProtectionConnection } from "./surge-protection-connection.ts";
import { switchRatingLow } from "./switch-rating-low.ts";

export const BOARDS: readonly Topic[] = Object.freeze([
  boardCoverMissing,
  boardBlankMissing,
  boardInnerShield,
  boardTopOpening,
  livePartsOutOfReach,
  boardCableEntry,
  boardCombustible,
  oldWoodenBoard,
  boardPosition,
  boardFixing,
  boardOverheating,
  boardTerminations,
  boardConductorOrder,
  mainSwitchMissingOrFaulty,
  mainSwitchPoles,
  isolationIncomplete,
  neutralFused,
  breakingCapacityExceeded,
  mixedDevices,
  deviceFaulty,
  switchRatingLow,
  rewirableFuses,
  fuseWireOversize,
  fuseCarrierBroken,
  maximumDemandExceeded,
  supplyDivision,
  selectivityLacking,
  surgeProtectionAbsent,
  surgeProtectionConnection,
  arcDetectionAbsent,
  boardDamp,
  boardThingsStored,
  basicProtection,
]);
