import type { Topic } from "../topic.ts";
import { arcDetectionAbsent } from "./arc-detection-absent.ts";
import { boardBlankMissing } from "./board-blank-missing.ts";
import { boardCombustible } from "./board-combustible.ts";
import { boardCoverMissing } from "./board-cover-missing.ts";
import { boardOverheating } from "./board-overheating.ts";
import { boardTopOpening } from "./board-top-opening.ts";
import { breakingCapacityExceeded } from "./breaking-capacity-exceeded.ts";
import { fuseWireOversize } from "./fuse-wire-oversize.ts";
import { mainSwitchPoles } from "./main-switch-poles.ts";
import { mixedDevices } from "./mixed-devices.ts";
import { neutralFused } from "./neutral-fused.ts";
import { rewirableFuses } from "./rewirable-fuses.ts";
import { supplyDivision } from "./supply-division.ts";
import { surgeProtectionAbsent } from "./surge-protection-absent.ts";

export const BOARDS: readonly Topic[] = Object.freeze([
  boardCoverMissing,
  boardBlankMissing,
  boardTopOpening,
  boardCombustible,
  boardOverheating,
  mainSwitchPoles,
  neutralFused,
  breakingCapacityExceeded,
  mixedDevices,
  rewirableFuses,
  fuseWireOversize,
  supplyDivision,
  surgeProtectionAbsent,
  arcDetectionAbsent,
]);
