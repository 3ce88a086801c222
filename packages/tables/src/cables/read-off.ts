import type { Source } from "@good-grounds/core";
import { source } from "../sources.ts";

/**
 * The source of a figure taken from a neighbouring step of a table, on the safe side. It is derived then, but a figure
 * from memory stays one: reading it off for another value makes it no better founded.
 */
export function readOff(from: Source, how: string): Source {
  const basis = from.basis === "memory" ? "memory" : "derived";
  const doubt = from.doubt === undefined ? {} : { doubt: from.doubt };
  return source(from.work, from.edition, basis, { formula: how, ...doubt });
}
