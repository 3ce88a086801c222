import type { Check, Scope } from "../check.ts";
import { additionalProtection } from "./additional-protection.ts";
import { electrode } from "./electrode.ts";
import { externalImpedance } from "./external-impedance.ts";
import { insulationResistance } from "./insulation-resistance.ts";
import { maximumZs } from "./maximum-zs.ts";
import { polarity } from "./polarity.ts";
import { r1r2Length } from "./r1r2-length.ts";
import { rcdTime } from "./rcd-time.ts";
import { ringContinuity } from "./ring-continuity.ts";
import { supplyPolarity } from "./supply-polarity.ts";
import { zsAgreement } from "./zs-agreement.ts";

/** Seals the pairing of needs and evidence inside each check, so that checks of different needs make one list. */
const listed = <S extends Scope>(...checks: readonly { readonly scope: S }[]): readonly Check<S>[] =>
  Object.freeze(checks as unknown as readonly Check<S>[]);

/** Checks of a circuit, in the order in which a report shows them. */
export const CIRCUIT_CHECKS = listed<"circuit">(
  maximumZs,
  zsAgreement,
  r1r2Length,
  ringContinuity,
  insulationResistance,
  polarity,
  additionalProtection,
);

/** Checks of a board. */
export const BOARD_CHECKS = listed<"board">();

/** Checks of each RCD, a circuit's own or a board's. */
export const RCD_CHECKS = listed<"rcd">(rcdTime);

/** Checks of each main bonding conductor. */
export const BOND_CHECKS = listed<"bond">();

/** Checks of the supply and the origin. */
export const SUPPLY_CHECKS = listed<"supply">(externalImpedance, supplyPolarity, electrode);

/** Every check. */
export const CHECKS: readonly Check[] = Object.freeze([
  ...SUPPLY_CHECKS,
  ...BOND_CHECKS,
  ...BOARD_CHECKS,
  ...CIRCUIT_CHECKS,
  ...RCD_CHECKS,
]) as unknown as readonly Check[];
