import type { Check } from "../check.ts";
import { maximumZs } from "./maximum-zs.ts";

/** A check of any needs; the pairing of needs and evidence is sealed inside each. */
type AnyCheck<S extends "circuit" | "board" | "supply"> = Check<S>;

const listed = <S extends "circuit" | "board" | "supply">(...checks: readonly unknown[]): readonly AnyCheck<S>[] =>
  Object.freeze(checks as readonly AnyCheck<S>[]);

/** Checks of a circuit, in the order in which a report shows them. */
export const CIRCUIT_CHECKS = listed<"circuit">(maximumZs);

/** Checks of a board. */
export const BOARD_CHECKS = listed<"board">();

/** Checks of the supply and the origin. */
export const SUPPLY_CHECKS = listed<"supply">();

export const CHECKS: readonly Check[] = Object.freeze([
  ...CIRCUIT_CHECKS,
  ...BOARD_CHECKS,
  ...SUPPLY_CHECKS,
]) as readonly Check[];
