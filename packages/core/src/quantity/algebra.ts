import type { Unit } from "./unit.ts";

/**
 * What two units make when multiplied: `PRODUCT[a][b]`. A pair that is not listed has no meaning here, and an
 * expression that uses it does not compile. Quotients follow from products (see {@link QuotientUnit}).
 */
interface Product {
  ohm: { ampere: "volt" };
  ampere: { ohm: "volt"; volt: "watt" };
  volt: { ampere: "watt" };
  "ohm-per-metre": { metre: "ohm" };
  metre: { "ohm-per-metre": "ohm"; "volt-per-ampere-metre": "ohm" };
  "volt-per-ampere-metre": { metre: "ohm" };
  "adiabatic-k": { "square-millimetre": "ampere-root-second" };
  "square-millimetre": { "adiabatic-k": "ampere-root-second" };
}

/** The unit of `A × B`. A ratio changes no unit. */
export type ProductUnit<A extends Unit, B extends Unit> = A extends "ratio"
  ? B
  : B extends "ratio"
    ? A
    : A extends keyof Product
      ? B extends keyof Product[A]
        ? Product[A][B]
        : never
      : never;

/** The unit of `A ÷ B`: the `Q` for which `B × Q` is `A`. */
export type QuotientUnit<A extends Unit, B extends Unit> = A extends B
  ? "ratio"
  : B extends "ratio"
    ? A
    : B extends keyof Product
      ? {
          [Q in keyof Product[B]]: Product[B][Q] extends A ? (A extends Product[B][Q] ? Q : never) : never;
        }[keyof Product[B]]
      : never;
