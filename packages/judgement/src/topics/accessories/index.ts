import type { Topic } from "../topic.ts";
import { accessoryBroken } from "./accessory-broken.ts";
import { accessoryConnectionLoose } from "./accessory-connection-loose.ts";
import { accessoryLoose } from "./accessory-loose.ts";
import { accessoryOverHob } from "./accessory-over-hob.ts";
import { accessoryOverheated } from "./accessory-overheated.ts";
import { adaptorsAsFixedWiring } from "./adaptors-as-fixed-wiring.ts";
import { backBoxMissing } from "./back-box-missing.ts";
import { cookerIsolationMissing } from "./cooker-isolation-missing.ts";
import { downlightInsulation } from "./downlight-insulation.ts";
import { emergencySwitchingMissing } from "./emergency-switching-missing.ts";
import { equipmentConnectionOpen } from "./equipment-connection-open.ts";
import { fixedEquipmentIsolation } from "./fixed-equipment-isolation.ts";
import { immersionCutout } from "./immersion-cutout.ts";
import { lampholderOrRoseOpen } from "./lampholder-or-rose-open.ts";
import { lightingTransformer } from "./lighting-transformer.ts";
import { luminaireHeat } from "./luminaire-heat.ts";
import { luminaireUnsupported } from "./luminaire-unsupported.ts";
import { metalAccessoryUnearthed } from "./metal-accessory-unearthed.ts";
import { motorProtection } from "./motor-protection.ts";
import { showerOverloaded } from "./shower-overloaded.ts";
import { smokeAlarmAbsent } from "./smoke-alarm-absent.ts";
import { socketHeight } from "./socket-height.ts";
import { socketNearWater } from "./socket-near-water.ts";
import { socketOldType } from "./socket-old-type.ts";
import { waterInEquipment } from "./water-in-equipment.ts";

export const ACCESSORIES: readonly Topic[] = Object.freeze([
  accessoryBroken,
  accessoryConnectionLoose,
  accessoryLoose,
  accessoryOverHob,
  accessoryOverheated,
  adaptorsAsFixedWiring,
  backBoxMissing,
  cookerIsolationMissing,
  downlightInsulation,
  emergencySwitchingMissing,
  equipmentConnectionOpen,
  fixedEquipmentIsolation,
  immersionCutout,
  lampholderOrRoseOpen,
  lightingTransformer,
  luminaireHeat,
  luminaireUnsupported,
  metalAccessoryUnearthed,
  motorProtection,
  showerOverloaded,
  smokeAlarmAbsent,
  socketHeight,
  socketNearWater,
  socketOldType,
  waterInEquipment,
]);
