/** Marks that combine with the letter before them take no column of their own; everything this project prints is else one wide. */
const COMBINING = /\p{Mn}/gu;
const WIDE =
  /[\u1100-\u115f\u2e80-\ua4cf\uac00-\ud7a3\uf900-\ufaff\ufe30-\ufe6f\uff00-\uff60\uffe0-\uffe6\u{1f300}-\u{1faff}\u{20000}-\u{3fffd}]/gu;

/** Columns a text takes in a terminal. */
export function columns(text: string): number {
  const plain = text.replaceAll(COMBINING, "");
  return [...plain].length + (plain.match(WIDE)?.length ?? 0);
}

/** Control characters have no business in a terminal: they could move the cursor or hide text. */
export function printable(text: string): string {
  return text.replaceAll(/[\p{Cc}\p{Cf}\p{Cs}\p{Co}]/gu, " ");
}

export function padded(text: string, width: number): string {
  return text + " ".repeat(Math.max(0, width - columns(text)));
}

/** Stands for the space between a number and its unit, which no line ends at; `printable` lets none come from outside. */
const TIED = "\ue000";
const BEFORE_UNIT = /(?<=\d) (?=(?:[µmkMG]?(?:Ω|A|V|s)|m|mm|mm²|°C|%|A²s|A√s)(?![\p{L}\p{N}²√]))/gu;

/** Breaks a text into lines of at most `width` columns, the first after `first`, the others after `rest`. */
export function wrapped(text: string, width: number, first = "", rest = first): string[] {
  const lines: string[] = [];
  let line = first;
  let empty = true;
  const flush = () => {
    lines.push(said(line));
    line = rest;
    empty = true;
  };
  for (const word of printable(text).replaceAll(BEFORE_UNIT, TIED).split(" ")) {
    if (word === "") continue;
    let left = word;
    if (!empty && columns(line) + 1 + columns(left) > width) flush();
    while (columns(line) + (empty ? 0 : 1) + columns(left) > width) {
      const room = Math.max(1, width - columns(line));
      let head = "";
      for (const point of left) {
        if (columns(head + point) > room) break;
        head += point;
      }
      if (head === "") head = [...left][0] ?? "";
      line += head;
      left = left.slice(head.length);
      flush();
      if (left === "") break;
    }
    if (left === "") continue;
    line += empty ? left : ` ${left}`;
    empty = false;
  }
  if (!empty || lines.length === 0) lines.push(said(line));
  return lines;
}

function said(line: string): string {
  return line.trimEnd().replaceAll(TIED, " ");
}
