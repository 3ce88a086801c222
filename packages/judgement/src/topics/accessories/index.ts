import type { Topic } from "../topic.ts";
import { accessoryBroken } from "./accessory-broken.ts";
import { accessoryLoose } from "./accessory-loose.ts";
import { accessoryOverheated } from "./accessory-overheated.ts";
import { downlightInsulation } from "./downlight-insulation.ts";
import { fixedEquipmentIsolation } from "./fixed-equipment-isolation.ts";
import { immersionCutout } from "./immersion-cutout.ts";
import { luminaireHeat } from "./luminaire-heat.ts";
import { metalAccessoryUnearthed } from "./metal-accessory-unearthed.ts";
import { showerOverloaded } from "./shower-overloaded.ts";

export const ACCESSORIES: readonly Topic[] = Object.freeze([
  accessoryBroken,
  accessoryLoose,
  accessoryOverheated,
  downlightInsulation,
  fixedEquipmentIsolation,
  immersionCutout,
  luminaireHeat,
  metalAccessoryUnearthed,
  showerOverloaded,
]);
