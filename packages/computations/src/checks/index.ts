import type { Check, Scope } from "../check.ts";
import { additionalProtection } from "./additional-protection.ts";
import { bondingContinuity } from "./bonding-continuity.ts";
import { bondingSize } from "./bonding-size.ts";
import { breakingCapacity } from "./breaking-capacity.ts";
import { cableCapacity } from "./cable-capacity.ts";
import { cpcAdiabatic } from "./cpc-adiabatic.ts";
import { cpcContinuity } from "./cpc-continuity.ts";
import { earthingConductorSize } from "./earthing-conductor-size.ts";
import { electrode } from "./electrode.ts";
import { externalImpedance } from "./external-impedance.ts";
import { insulationResistance } from "./insulation-resistance.ts";
import { maximumDemand } from "./maximum-demand.ts";
import { maximumZs } from "./maximum-zs.ts";
import { polarity } from "./polarity.ts";
import { r1r2Length } from "./r1r2-length.ts";
import { rcdTime } from "./rcd-time.ts";
import { ringContinuity } from "./ring-continuity.ts";
import { supplyBreakingCapacity } from "./supply-breaking-capacity.ts";
import { supplyPolarity } from "./supply-polarity.ts";
import { supplyVoltage } from "./supply-voltage.ts";
import { voltageDrop } from "./voltage-drop.ts";
import { zsAgreement } from "./zs-agreement.ts";

/** Seals the pairing of needs and evidence inside each check, so that checks of different needs make one list. */
const listed = <S extends Scope>(...checks: readonly { readonly scope: S }[]): readonly Check<S>[] =>
  Object.freeze(checks as unknown as readonly Check<S>[]);

/** Checks of a circuit, in the order in which a report shows them. */
export const CIRCUIT_CHECKS = listed<"circuit">(
  maximumZs,
  zsAgreement,
  r1r2Length,
  cpcContinuity,
  ringContinuity,
  insulationResistance,
  polarity,
  additionalProtection,
  breakingCapacity,
  cpcAdiabatic,
  cableCapacity,
  voltageDrop,
);

/** Checks of a board. */
export const BOARD_CHECKS = listed<"board">();

/** Checks of each RCD, a circuit's own or a board's. */
export const RCD_CHECKS = listed<"rcd">(rcdTime);

/** Checks of each main bonding conductor. */
export const BOND_CHECKS = listed<"bond">(bondingSize, bondingContinuity);

/** Checks of the supply and the origin. */
export const SUPPLY_CHECKS = listed<"supply">(
  externalImpedance,
  supplyPolarity,
  electrode,
  supplyVoltage,
  supplyBreakingCapacity,
  earthingConductorSize,
  maximumDemand,
);

/** Every check. */
export const CHECKS: readonly Check[] = Object.freeze([
  ...SUPPLY_CHECKS,
  ...BOND_CHECKS,
  ...BOARD_CHECKS,
  ...CIRCUIT_CHECKS,
  ...RCD_CHECKS,
]) as unknown as readonly Check[];
