import { TOKENS } from "./tokens.ts";

/** Text made safe to stand inside an element or an attribute. Characters XML does not know are left out. */
function escapeXml(text: string): string {
  return [...text]
    .filter((point) => /[\t\n\r\u{20}-\u{d7ff}\u{e000}-\u{fffd}\u{10000}-\u{10ffff}]/u.test(point))
    .join("")
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replaceAll('"', "&quot;");
}

export type Attributes = Readonly<Record<string, string | number>>;

/** One element; attribute values and text are escaped, `inner` is taken as it is. */
export function element(name: string, attributes: Attributes, inner = ""): string {
  const written = Object.entries(attributes)
    .map(([key, value]) => ` ${key}="${typeof value === "number" ? rounded(value) : escapeXml(value)}"`)
    .join("");
  return inner === "" ? `<${name}${written}/>` : `<${name}${written}>${inner}</${name}>`;
}

function rounded(value: number): string {
  return String(Math.round(value * 100) / 100);
}

export function line(x1: number, y1: number, x2: number, y2: number, more: Attributes = {}): string {
  return element("line", { x1, y1, x2, y2, stroke: TOKENS.ink, "stroke-width": 1, ...more });
}

export function rect(x: number, y: number, width: number, height: number, more: Attributes = {}): string {
  return element("rect", { x, y, width, height, ...more });
}

export function text(x: number, y: number, words: string, more: Attributes = {}): string {
  return element(
    "text",
    { x, y, "font-family": TOKENS.font, "font-size": TOKENS.size, fill: TOKENS.ink, ...more },
    escapeXml(words),
  );
}

/** A whole drawing with its title and description for readers who do not see it. */
export function drawing(width: number, height: number, title: string, description: string, inner: string): string {
  const head = element("title", {}, escapeXml(title) || " ") + element("desc", {}, escapeXml(description) || " ");
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${rounded(width)} ${rounded(height)}" width="${rounded(width)}" height="${rounded(height)}" role="img">${head}${inner}</svg>`;
}

/** Width of a letter as a part of its size: capitals and the letters of other scripts are wider than the mean letter. */
function widthOf(letter: string): number {
  const capital = /\p{Lu}/u.test(letter);
  if (letter > "\u036f") return capital ? 0.9 : 0.66;
  return capital ? 0.66 : 0.52;
}

/** Width a text takes, near enough to keep labels apart. */
export function textWidth(words: string, size: number = TOKENS.size): number {
  return [...words].reduce((sum, letter) => sum + widthOf(letter), 0) * size;
}

/** A text cut to a width, with an ellipsis where something was cut. */
export function fitted(words: string, width: number, size: number = TOKENS.size): string {
  if (textWidth(words, size) <= width) return words;
  const room = width - size;
  let kept = "";
  for (const letter of words) {
    if (kept !== "" && textWidth(kept + letter, size) > room) break;
    kept += letter;
  }
  return `${kept}…`;
}
