import { source } from "../sources.ts";

/** Kinds of premises the allowances are given for. */
export const DIVERSITY_PREMISES = ["household", "shop-or-office", "hotel"] as const;
export type DiversityPremises = (typeof DIVERSITY_PREMISES)[number];

/** Kinds of load the allowances are given for. */
export const DIVERSITY_LOADS = [
  "lighting",
  "heating-and-power",
  "cooking",
  "motors",
  "instantaneous-water-heaters",
  "thermostatic-water-heaters",
  "standard-circuits",
  "other-sockets",
] as const;
export type DiversityLoad = (typeof DIVERSITY_LOADS)[number];

/**
 * An allowance. `whole`: a part of the sum. `first-then`: the first amperes in full, a part of the rest, and an addition
 * for a socket-outlet on the control unit. `ranked`: parts of the largest, the second and every further load.
 */
export type Allowance =
  | { readonly rule: "whole"; readonly part: number }
  | { readonly rule: "first-then"; readonly first: number; readonly rest: number; readonly socket: number }
  | { readonly rule: "ranked"; readonly largest: number; readonly second: number; readonly rest: number };

const whole = (part: number): Allowance => ({ rule: "whole", part });
const ranked = (largest: number, second: number, rest: number): Allowance => ({
  rule: "ranked",
  largest,
  second,
  rest,
});

/** Handbook allowances; they are no requirement, and a measured demand is better. */
export const DIVERSITY_SOURCE = source(
  "handbook values of diversity, seen on pages reproducing them",
  "16th to 18th edition",
  "published",
  {
    doubt: "allowances for judgement, no requirement",
  },
);

/** Allowance by load and premises; null where the table has none. */
export const DIVERSITY: Readonly<Record<DiversityLoad, Readonly<Record<DiversityPremises, Allowance | null>>>> =
  Object.freeze({
    lighting: { household: whole(0.66), "shop-or-office": whole(0.9), hotel: whole(0.75) },
    "heating-and-power": {
      household: { rule: "first-then", first: 10, rest: 0.5, socket: 0 },
      "shop-or-office": ranked(1, 0.75, 0.75),
      hotel: ranked(1, 0.8, 0.6),
    },
    cooking: {
      household: { rule: "first-then", first: 10, rest: 0.3, socket: 5 },
      "shop-or-office": ranked(1, 0.8, 0.6),
      hotel: ranked(1, 0.8, 0.6),
    },
    motors: { household: null, "shop-or-office": ranked(1, 0.8, 0.6), hotel: ranked(1, 0.5, 0.5) },
    "instantaneous-water-heaters": {
      household: ranked(1, 1, 0.25),
      "shop-or-office": ranked(1, 1, 0.25),
      hotel: ranked(1, 1, 0.25),
    },
    "thermostatic-water-heaters": { household: whole(1), "shop-or-office": whole(1), hotel: whole(1) },
    "standard-circuits": {
      household: ranked(1, 0.4, 0.4),
      "shop-or-office": ranked(1, 0.5, 0.5),
      hotel: ranked(1, 0.5, 0.5),
    },
    "other-sockets": {
      household: ranked(1, 0.4, 0.4),
      "shop-or-office": ranked(1, 0.75, 0.75),
      hotel: ranked(1, 0.75, 0.4),
    },
  });
