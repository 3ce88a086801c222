import type { Topic } from "../topic.ts";
import { aluminiumOrMixedConductors } from "./aluminium-or-mixed-conductors.ts";
import { cableArmourUnearthed } from "./cable-armour-unearthed.ts";
import { cableBunchedOrHot } from "./cable-bunched-or-hot.ts";
import { cableBuried } from "./cable-buried.ts";
import { cableDamaged } from "./cable-damaged.ts";
import { cableInWall } from "./cable-in-wall.ts";
import { cableMetalPartition } from "./cable-metal-partition.ts";
import { cableNearServices } from "./cable-near-services.ts";
import { cableThroughJoist } from "./cable-through-joist.ts";
import { cableUnderInsulation } from "./cable-under-insulation.ts";
import { cableUnsupported } from "./cable-unsupported.ts";
import { flexibleCordAsFixedWiring } from "./flexible-cord-as-fixed-wiring.ts";
import { jointInaccessible } from "./joint-inaccessible.ts";
import { jointNotEnclosed } from "./joint-not-enclosed.ts";
import { overheadCable } from "./overhead-cable.ts";
import { pvcExudation } from "./pvc-exudation.ts";
import { rubberOrLeadCable } from "./rubber-or-lead-cable.ts";
import { sheathMissing } from "./sheath-missing.ts";
import { trunkingOrConduitOpen } from "./trunking-or-conduit-open.ts";
import { wiringNotKeptApart } from "./wiring-not-kept-apart.ts";

export const CABLES: readonly Topic[] = Object.freeze([
  cableDamaged,
  sheathMissing,
  trunkingOrConduitOpen,
  cableInWall,
  cableMetalPartition,
  rubberOrLeadCable,
  pvcExudation,
  cableUnsupported,
  cableUnderInsulation,
  cableBunchedOrHot,
  cableNearServices,
  wiringNotKeptApart,
  cableThroughJoist,
  cableBuried,
  cableArmourUnearthed,
  overheadCable,
  flexibleCordAsFixedWiring,
  jointNotEnclosed,
  jointInaccessible,
  aluminiumOrMixedConductors,
]);
