import { printQuantity } from "@good-grounds/core";

/** Readings shown with a misfit of a whole board. */
export const MOST_READINGS = 12;

/** A resistance, Ω, as a misfit of a whole board says it: to two decimals. */
export const ohms = (value: number) => printQuantity(Math.round(value * 100) / 100, "ohm");
