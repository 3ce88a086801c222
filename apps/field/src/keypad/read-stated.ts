import { parseWritten, type Unit } from "@good-grounds/core";
import type { Value } from "../record/entry.ts";

/** What was typed as a file has it; null where nothing was, undefined where it is no quantity of this unit. */
export function readStated(text: string, symbol: string, unit: Unit): Value | undefined {
  const trimmed = text.trim().replaceAll(",", ".");
  if (trimmed === "") return null;
  const ends = trimmed.split(/\s*(?:\bto\b|–|(?<=\d)-)\s*/u);
  const written = ends.map((end) => {
    const full = /[a-z²°Ω%]/iu.test(end) ? end.replace(/^([\d.+-]+)\s*/, "$1 ") : `${end} ${symbol}`;
    const read = parseWritten(full, unit);
    return "code" in read || read.bound !== "exact" || (read.value < 0 && unit !== "celsius") ? undefined : full;
  });
  const [from, to, ...more] = written;
  if (written.includes(undefined) || more.length > 0 || from === undefined) return undefined;
  return to === undefined ? from : { from, to };
}
