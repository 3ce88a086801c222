import { parseWritten, printQuantity } from "@good-grounds/core";
import { KINDS, type Kind, type KindId } from "./kinds.ts";

/** What a value is asked about: how it stands out, and what may have been meant. */
export interface Doubt {
  readonly why: "unusual" | "expected";
  /** About what was expected, in words; only where something was. */
  readonly expected?: string;
  /** The same digits with the point elsewhere, where that would be no surprise. */
  readonly instead?: string;
}

/** A value this many times what other readings lead to expect is asked about; honest readings seldom differ so much. */
const FAR = 4;

/**
 * Whether a reading may have slipped by a factor of ten, or is not what this function of an instrument usually shows.
 * It is only ever asked about. `expected` is what other readings lead to expect, in the coherent unit.
 */
export function doubtAbout(shown: string, id: KindId, expected: number | undefined): Doubt | undefined {
  const kind: Kind = KINDS[id];
  const written = parseWritten(shown, kind.unit);
  if ("code" in written || written.bound !== "exact") return undefined;
  const { value } = written;
  const near = (other: number) => expected === undefined || isNear(other, expected);
  const usual = (other: number) => other >= kind.usual[0] && other <= kind.usual[1];
  if (usual(value) && near(value)) return undefined;
  const instead = [0.1, 10, 0.01, 100, 0.001, 1000].find((factor) => usual(value * factor) && near(value * factor));
  const moved = instead === undefined ? undefined : shifted(shown, Math.round(Math.log10(instead)));
  const isFar = expected !== undefined && !near(value);
  // Far from what was expected, but no slip of the point explains it: that is for the checks to judge.
  if (isFar && usual(value) && moved === undefined) return undefined;
  return {
    why: isFar ? "expected" : "unusual",
    ...(isFar ? { expected: printQuantity(expected, kind.unit) } : {}),
    ...(moved === undefined ? {} : { instead: moved }),
  };
}

function isNear(value: number, expected: number): boolean {
  return value <= expected * FAR && value >= expected / FAR;
}

/** The same digits with the point moved by so many places. */
export function shifted(shown: string, places: number): string | undefined {
  const parts = /^([<>]?-?)(\d+)(?:\.(\d+))? (\S+)$/.exec(shown);
  if (parts === null) return undefined;
  const [, lead = "", whole = "", part = "", unit = ""] = parts;
  let digits = whole + part;
  let point = whole.length + places;
  if (point <= 0) {
    digits = "0".repeat(1 - point) + digits;
    point = 1;
  }
  digits = digits.padEnd(point, "0");
  const front = digits.slice(0, point).replace(/^0+(?=\d)/, "");
  const back = digits.slice(point);
  return `${lead}${front}${back === "" ? "" : `.${back}`} ${unit}`;
}
