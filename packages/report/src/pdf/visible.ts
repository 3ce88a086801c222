/** Words longer than this get places where a line may break; a word of the language never does. */
const LONGEST_WORD = 24;
const BREAK = "\u200b";

/** Characters that change how others are shown, or show nothing: they could make a report read other than it was written. */
const UNSEEN = /[\p{Cc}\p{Cf}\p{Cs}\p{Co}\p{Cn}\u{115f}\u{1160}\u{3164}\u{ffa0}]|\p{Variation_Selector}/u;

/**
 * A text as the page shows it: every character of it is seen. What the print face lacks and what would be invisible is
 * written as code points, "[U+202E]" or "[U+05E9 U+05DC]" for a run of them; line breaks stay, tabs become spaces, and very long words may be broken. The
 * attached file has the text as it was.
 */
export function visible(text: string, covers: (point: number) => boolean): string {
  const settled = text
    .normalize("NFC")
    .replaceAll("\t", " ")
    .replaceAll(/\r\n?|[\u0085\u2028\u2029]/g, "\n");
  let shown = "";
  let hidden: string[] = [];
  for (const character of settled) {
    const point = character.codePointAt(0) ?? 0;
    if (character !== "\n" && (UNSEEN.test(character) || !covers(point))) {
      hidden.push(`U+${point.toString(16).toUpperCase().padStart(4, "0")}`);
      continue;
    }
    shown += bracketed(hidden) + character;
    hidden = [];
  }
  shown += bracketed(hidden);
  return shown.replaceAll(/\S+/gu, breakable);
}

function bracketed(points: readonly string[]): string {
  return points.length === 0 ? "" : `[${points.join(" ")}]`;
}

function breakable(word: string): string {
  if ([...word].length <= LONGEST_WORD) return word;
  // Where the word has joints it breaks there: the number of a standard stays whole between them.
  return word
    .split(/(?<=[+/,;_-])/u)
    .map((piece) => ([...piece].length <= LONGEST_WORD ? piece : chopped(piece)))
    .join(BREAK);
}

function chopped(piece: string): string {
  const points = [...piece];
  const parts: string[] = [];
  for (let i = 0; i < points.length; i += 4) parts.push(points.slice(i, i + 4).join(""));
  return parts.join(BREAK);
}

/** The same for every text within plain data. */
export function visibleData(data: unknown, covers: (point: number) => boolean): unknown {
  if (typeof data === "string") return visible(data, covers);
  if (Array.isArray(data)) return data.map((part) => visibleData(part, covers));
  if (data === null || typeof data !== "object") return data;
  return Object.fromEntries(Object.entries(data).map(([key, part]) => [key, visibleData(part, covers)]));
}

/** A drawing with the characters the print face lacks as code points; long words keep their place on the drawing. */
export function visibleDrawing(svg: string, covers: (point: number) => boolean): string {
  return visible(svg, covers).replaceAll(BREAK, "");
}
