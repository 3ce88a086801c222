import { readFileSync } from "node:fs";

/** A phrase as it is typed on site, and the ids of the topics an electrician would accept for it. */
export interface RoughPhrase {
  readonly typed: string;
  readonly accepted: readonly string[];
}

/** Phrases the search was made with, and those it was not. */
export const PHRASES = read("rough-phrases.txt");
export const HELD_OUT_PHRASES = read("rough-phrases-held-out.txt");
/** Held out as well, and written when the tables had been mended for the others: the nearest there is to a new person. */
export const LATER_PHRASES = read("rough-phrases-later.txt");

function read(name: string): readonly RoughPhrase[] {
  const lines = readFileSync(new URL(`data/${name}`, import.meta.url), "utf8").split("\n");
  return lines.flatMap((line, i) => {
    if (line === "" || line.startsWith("#")) return [];
    const [typed = "", accepted = ""] = line.split(" > ");
    if (accepted === "") throw new Error(`${name}, line ${i + 1}: "${line}" has no " > " with topics after it`);
    return [{ typed, accepted: accepted.split(" or ") }];
  });
}
