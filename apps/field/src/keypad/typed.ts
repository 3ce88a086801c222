import { parseWritten } from "@good-grounds/core";
import { KEYPAD } from "../words/keypad.ts";
import { KINDS, type Kind, type KindId } from "./kinds.ts";

/** What somebody typed, as a value with its unit, or what is wrong with it. Nothing typed is no value. */
export type Typed = { readonly shown: string } | { readonly fault: string } | { readonly empty: true };

const FORM = /^([<>])?\s*([+-]?)(\d*)(?:[.,](\d*))?\s*([a-zµΩ°]*)$/iu;

/**
 * Reads what was typed in a field or by the keys, as quickly as it may be typed: a comma as the point, ".42", "0,42m",
 * "OL" and ">" alone for a display at the end of its range `top`.
 */
export function readTyped(text: string, symbol: string, id: KindId, top: string | undefined): Typed {
  const kind: Kind = KINDS[id];
  const trimmed = text.trim();
  if (trimmed === "") return { empty: true };
  if (/^(o\.?l\.?|>)$/iu.test(trimmed)) return top === undefined ? { fault: KEYPAD.whichTop } : { shown: `>${top}` };
  const parts = FORM.exec(trimmed);
  if (parts === null) return { fault: KEYPAD.notANumber };
  const [, bound = "", sign, whole = "", part = "", letters = ""] = parts;
  if (whole === "" && part === "") return { fault: KEYPAD.notANumber };
  const unit = letters === "" ? symbol : symbolOf(letters, kind);
  if (unit === undefined) return { fault: KEYPAD.otherUnit(kind.symbols) };
  // Zeros before the number are slips of the thumb; zeros behind it are what the display showed.
  const number = `${sign === "-" ? "-" : ""}${whole.replace(/^0+(?=\d)/, "") || "0"}${part === "" ? "" : `.${part}`}`;
  const shown = `${bound}${number} ${unit}`;
  const written = parseWritten(shown, kind.unit);
  if ("code" in written) return { fault: KEYPAD.notANumber };
  if (written.value < 0 && kind.signed !== true) return { fault: KEYPAD.negative };
  return { shown };
}

/** The unit somebody means by a few letters: "M", "meg", "k", "ms". */
function symbolOf(letters: string, { symbols }: Kind): string | undefined {
  const exact = symbols.find((symbol) => symbol === letters);
  if (exact !== undefined) return exact;
  const plain = (symbol: string) => symbol.replace("Ω", "ohm").replace("°", "").toLowerCase();
  const typed = plain(letters.replace("µ", "u")).replace(/s$/, (last) =>
    letters.toLowerCase() === "ohms" ? "" : last,
  );
  const found = symbols.filter((symbol) => plain(symbol) === typed || plain(symbol)[0] === typed);
  // "m" is milli and "M" is mega: where both could be meant the letter itself decides.
  return found.find((symbol) => symbol[0] === letters[0]) ?? found[0];
}

/** Keys of the pad that change the text. */
export type TextKey = "0" | "1" | "2" | "3" | "4" | "5" | "6" | "7" | "8" | "9" | "." | "back" | "clear" | "sign";

/** Longest text that is still a reading. */
const LONGEST = 12;

/** The text after a key. */
export function pressed(text: string, key: TextKey): string {
  if (key === "clear") return "";
  if (key === "back") return text.slice(0, -1);
  if (key === "sign") return text.startsWith("-") ? text.slice(1) : `-${text}`;
  if (key === ".") {
    if (/[.,]/.test(text)) return text;
    return /\d$/.test(text) ? `${text}.` : `${text}0.`;
  }
  return text.length >= LONGEST ? text : `${text}${key}`;
}

/** Number and unit of a value as it was written, for typing on. */
export function splitShown(shown: string, kind: Kind): { readonly text: string; readonly symbol: string } {
  const at = shown.lastIndexOf(" ");
  const symbol = at < 0 ? "" : shown.slice(at + 1);
  const isKnown = kind.symbols.includes(symbol);
  return isKnown ? { text: shown.slice(0, at), symbol } : { text: shown, symbol: kind.symbols[0] ?? "" };
}
