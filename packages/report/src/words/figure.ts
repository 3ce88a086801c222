import { type Compared, type Evidence, isKnown, printQuantity, type Unit } from "@good-grounds/core";
import { WORDS } from "../locales/en.ts";

/** A value as somebody wrote it, where it was written; computed and tabulated values with three digits. */
export function valueWords(evidence: Evidence<Unit>): string {
  if (!isKnown(evidence)) return WORDS.notKnown;
  if (evidence.kind === "measured" || evidence.kind === "seen") return evidence.detail.text;
  return printQuantity(evidence.value, evidence.term.unit);
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
