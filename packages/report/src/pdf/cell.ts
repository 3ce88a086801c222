import { type Evidence, isKnown, type Unit } from "@good-grounds/core";
import { WORDS } from "../locales/en.ts";
import { REPORT } from "../locales/report-en.ts";
import { bandWords, valueWords } from "../words/figure.ts";

/**
 * Words of a cell or a line; `open` marks a gap, which is printed apart so that it never looks like an answer. Where only
 * some of it is a gap, `parts` has the pieces in turn.
 */
export interface Cell {
  readonly words: string;
  readonly open: boolean;
  readonly parts?: readonly Cell[];
}

/** A fact of any words, known or not. */
export type AnyFact =
  | { readonly kind: "fact"; readonly word: string | boolean }
  | {
      readonly kind: "fact-not-known";
      readonly detail: { readonly silence: keyof typeof REPORT.silence; readonly reason: string };
    };

export function cell(words: string): Cell {
  return { words, open: false };
}

export function gap(words: string): Cell {
  return { words, open: true };
}

/** Words where something may be missing from the file. */
export function cellOr(words: string | undefined, otherwise: string = REPORT.silence.absent): Cell {
  return words === undefined || words === "" ? gap(otherwise) : cell(words);
}

/** Several cells as one; it is a gap if any part is, and what is known in it still looks like an answer. */
export function joined(cells: readonly Cell[], between = ", "): Cell {
  const words = cells.map((one) => one.words).join(between);
  const open = cells.some((one) => one.open);
  if (!open || cells.every((one) => one.open && one.parts === undefined)) return { words, open };
  const parts = cells.flatMap((one, i) => [...(i === 0 ? [] : [cell(between)]), ...(one.parts ?? [one])]);
  return { words, open, parts };
}

/** Particulars of one thing; where the same is to be said of none of them, it is said once. */
export function particulars(cells: readonly (readonly [what: string, value: Cell])[]): Cell {
  const [first] = cells;
  if (first !== undefined && cells.every(([, one]) => one.open && one.words === first[1].words)) return first[1];
  return joined(cells.map(([what, value]) => named(what, value)));
}

/** A gap among others says what is missing; what is known speaks for itself. */
function named(what: string, value: Cell): Cell {
  return value.open && what !== "" ? gap(`${what} ${value.words}`) : value;
}

/** A value as shown, or in a word why there is none. */
export function valueCell(evidence: Evidence<Unit>): Cell {
  if (isKnown(evidence)) return cell(valueWords(evidence));
  return gap(evidence.kind === "not-known" ? REPORT.silence[evidence.detail.silence] : WORDS.notKnown);
}

/** A value with its band where the instrument leaves one, or why there is none with the reason. */
export function fullCell(evidence: Evidence<Unit>): Cell {
  if (!isKnown(evidence)) {
    const reason = evidence.kind === "not-known" ? evidence.detail.reason : "";
    return gap([valueCell(evidence).words, reason].filter((part) => part !== "").join(": "));
  }
  const band = evidence.kind === "measured" ? bandWords(evidence) : "";
  return cell(band === "" ? valueWords(evidence) : `${valueWords(evidence)} (${band})`);
}

/** A fact in its own word, or in another. */
export function factCell(fact: AnyFact, say: Readonly<Record<string, string>> = {}): Cell {
  if (fact.kind === "fact-not-known") return gap(REPORT.silence[fact.detail.silence]);
  if (fact.word === true) return cell(WORDS.yes);
  if (fact.word === false) return cell(WORDS.no);
  return cell(say[fact.word] ?? fact.word);
}

/** A fact with the reason where it is not known. */
export function fullFactCell(fact: AnyFact, say: Readonly<Record<string, string>> = {}): Cell {
  if (fact.kind === "fact" || fact.detail.reason === "") return factCell(fact, say);
  return gap(`${REPORT.silence[fact.detail.silence]}: ${fact.detail.reason}`);
}

/** A member of the file that may be absent or a statement that it is not known. */
export function statedCell(
  stated:
    | string
    | number
    | boolean
    | { readonly notKnown: keyof typeof REPORT.silence; readonly reason: string }
    | undefined,
): Cell {
  if (stated === undefined) return gap(REPORT.silence.absent);
  if (typeof stated === "object") return gap(`${REPORT.silence[stated.notKnown]}: ${stated.reason}`);
  if (typeof stated === "boolean") return cell(stated ? WORDS.yes : WORDS.no);
  return cell(String(stated));
}
