import type { Unit } from "../quantity/unit.ts";

/** A quantity of the trade: what it is called, how it is written in a formula and what it is measured in. */
export interface Term<U extends Unit = Unit> {
  readonly id: string;
  /** The trade's words, lower case, kind of value first: "measured earth fault loop impedance". */
  readonly name: string;
  /** The trade's symbol, or the empty string. */
  readonly symbol: string;
  readonly unit: U;
}

/** Something that is one of a few words or yes/no rather than a quantity: an earthing system, a device standard. */
export interface Matter {
  readonly id: string;
  readonly name: string;
}

export function term<U extends Unit>(id: string, name: string, symbol: string, unit: U): Term<U> {
  return Object.freeze({ id, name, symbol, unit });
}

export function matter(id: string, name: string): Matter {
  return Object.freeze({ id, name });
}
