import { type Compared, DIGITS, type Evidence, isKnown, printQuantity, type Unit } from "@good-grounds/core";
import { WORDS } from "../locales/en.ts";

/** A value as somebody wrote it, where it was written; computed and tabulated values with three digits. */
export function valueWords(evidence: Evidence<Unit>): string {
  if (!isKnown(evidence)) return WORDS.notKnown;
  if (evidence.kind === "measured" || evidence.kind === "seen") return evidence.detail.text;
  return printQuantity(evidence.value, evidence.term.unit);
}

/** Digits beyond which two values that differ are not told apart in print. */
const MOST_DIGITS = 9;

/**
 * Two values that are compared, with as many digits as it takes to see which is larger: 1.37 Ω beside 1.366 Ω. What
 * somebody wrote stays as written.
 */
export function valuesApart(a: Evidence<Unit>, b: Evidence<Unit>): readonly [a: string, b: string] {
  const plain = [valueWords(a), valueWords(b)] as const;
  if (plain[0] !== plain[1] || !isKnown(a) || !isKnown(b) || a.value === b.value) return plain;
  for (let digits = DIGITS + 1; digits <= MOST_DIGITS; digits++) {
    const [x, y] = [a, b].map((one) =>
      isWritten(one) ? valueWords(one) : printQuantity(one.value, one.term.unit, digits),
    );
    if (x !== undefined && y !== undefined && x !== y) return [x, y];
  }
  return plain;
}

function isWritten({ kind }: Evidence<Unit>): boolean {
  return kind === "measured" || kind === "seen";
}

/** The band of a value, "0.44 Ω to 0.54 Ω"; empty where it is exact. */
export function bandWords(evidence: Evidence<Unit>): string {
  if (!isKnown(evidence) || evidence.low === evidence.high) return "";
  const { unit } = evidence.term;
  const low = printQuantity(evidence.low, unit);
  const high = printQuantity(evidence.high, unit);
  return low === high ? "" : `${low} to ${high}`;
}

/** The margin of a comparison in words: how much is left, how far beyond or short of the limit. Empty for agreement. */
export function marginWords({ margin, relation }: Pick<Compared, "margin" | "relation">): string {
  if (Number.isNaN(margin) || (relation !== "at-most" && relation !== "at-least")) return "";
  const percent = Math.round(Math.abs(margin) * 100);
  if (margin >= 0) return WORDS.left(percent);
  if (percent > MOST_PERCENT) return WORDS.farBeyond(MOST_PERCENT);
  return relation === "at-most" ? WORDS.beyond(percent) : WORDS.short(percent);
}

/** A short margin for the end of a line: "+63 %", "−67 %", "<−999 %" where a figure would say no more. */
export function marginFigure(margin: number): string {
  if (Number.isNaN(margin)) return "";
  const percent = Math.round(Math.min(1, margin) * 100);
  if (percent < -MOST_PERCENT) return `<−${MOST_PERCENT} %`;
  return `${percent < 0 ? "−" : "+"}${Math.abs(percent)} %`;
}

/** A limit missed tenfold is missed: more digits would only take room. */
const MOST_PERCENT = 999;
