import type { Unit } from "./unit.ts";

declare const unitOf: unique symbol;

/**
 * A finite or infinite number known to be in the coherent unit `U`. The brand exists only for the compiler: adding a
 * `Quantity<"ohm">` to a `Quantity<"ampere">` through the functions here does not compile, and costs nothing at run time.
 */
export type Quantity<U extends Unit> = number & { readonly [unitOf]: U };

/** States that `value` is in `unit`. Throws on NaN: a value that is not a number is not a quantity. */
export function quantity<U extends Unit>(value: number, unit: U): Quantity<U> {
  if (Number.isNaN(value)) throw new RangeError(`not a number, where a quantity in ${unit} was expected`);
  return value as Quantity<U>;
}
