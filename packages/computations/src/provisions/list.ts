import { leakageWithin } from "./additional/leakage-within.ts";
import { rcdFeedDirection } from "./additional/rcd-feed-direction.ts";
import { rcdTypeSuits } from "./additional/rcd-type-suits.ts";
import { rcdsGrade } from "./additional/rcds-grade.ts";
import { residualWhereAsked } from "./additional/residual-where-asked.ts";
import type { Assessor } from "./assessor.ts";
import { automaticDisconnection } from "./fault/automatic-disconnection.ts";
import { classTwo } from "./fault/class-two.ts";
import { electricalSeparation } from "./fault/electrical-separation.ts";
import { extraLowVoltage } from "./fault/extra-low-voltage.ts";
import { partIsolated } from "./fault/part-isolated.ts";
import { supplementaryBonding } from "./fault/supplementary-bonding.ts";
import { cableLayersLeft } from "./insulation/layers-left.ts";
import { liveInsulation } from "./insulation/live-insulation.ts";
import { isolationMeans } from "./isolation/isolation-means.ts";
import { barrierSecured } from "./openings/barrier-secured.ts";
import { enclosureOpening } from "./openings/enclosure-opening.ts";
import { largerOpening } from "./openings/larger-opening.ts";
import { obstacleProtection } from "./openings/obstacles.ts";
import { openingAccess } from "./openings/opening-access.ts";
import { devicesGrade } from "./overcurrent/devices-grade.ts";
import { overcurrentProtects } from "./overcurrent/overcurrent-protects.ts";
import { cableInInsulation } from "./thermal/cable-in-insulation.ts";
import { consumerUnitMaterial } from "./thermal/consumer-unit-material.ts";
import { heatCondition } from "./thermal/heat-condition.ts";
import { recessedLuminaire } from "./thermal/recessed-luminaire.ts";

/** Every assessor of a protective provision, basic protection first. */
export const ASSESSORS: readonly Assessor[] = Object.freeze([
  liveInsulation,
  cableLayersLeft,
  openingAccess,
  enclosureOpening,
  barrierSecured,
  largerOpening,
  obstacleProtection,
  automaticDisconnection,
  classTwo,
  extraLowVoltage,
  electricalSeparation,
  supplementaryBonding,
  partIsolated,
  residualWhereAsked,
  rcdTypeSuits,
  rcdFeedDirection,
  leakageWithin,
  rcdsGrade,
  overcurrentProtects,
  devicesGrade,
  heatCondition,
  cableInInsulation,
  consumerUnitMaterial,
  recessedLuminaire,
  isolationMeans,
]) as unknown as readonly Assessor[];
