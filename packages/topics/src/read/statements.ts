import type { Line } from "../text/lines.ts";
import { spotIn } from "../text/lines.ts";
import { nearTo } from "../text/near.ts";
import { type Desk, short } from "./desk.ts";

/** A statement that may stand below another: how it begins, how often, and what is done with it. */
export interface Place {
  /** The words it begins with: "found by". */
  readonly begins: string;
  readonly read: (line: Line) => void;
  readonly often?: boolean;
}

/** Reads what stands below a line, each by how it begins; `other` takes lines that begin with a name and a colon. */
export function readBelow(line: Line, desk: Desk, places: readonly Place[], other?: (line: Line) => boolean): void {
  const seen = new Set<string>();
  for (const one of line.below) {
    // Where names may stand, a word with a colon right behind it is a name, not the beginning of a statement.
    const sign = other === undefined ? /^[\s:]|^$/ : /^\s|^$/;
    const place = places.find(({ begins }) => one.text.startsWith(begins) && sign.test(one.text.slice(begins.length)));
    if (place === undefined) {
      if (other?.(one) !== true) unknown(one, places, other !== undefined, desk);
      continue;
    }
    if (place.often !== true && seen.has(place.begins)) {
      desk.fault(spotIn(one), `"${place.begins}" a second time`, "it once", "take one of the two away");
      continue;
    }
    seen.add(place.begins);
    place.read(one);
  }
}

function unknown(line: Line, places: readonly Place[], named: boolean, desk: Desk): void {
  const [first = ""] = line.text.split(/[\s:]/);
  const starts = places.map(({ begins }) => begins);
  const [near] = nearTo(
    first,
    starts.map((one) => one.split(" ")[0] ?? ""),
  );
  desk.fault(
    spotIn(line, 0, first.length),
    `"${short(first)}" begins nothing that may stand here`,
    `${starts.map((one) => `"${one}"`).join(", ")}${named ? ', or a name and ":"' : ""}`,
    near === undefined
      ? "write one of these, or indent the line to where it belongs"
      : `is it "${starts.find((one) => one.startsWith(near))}"?`,
  );
}

/** What stands behind the first words of a line, without the colon. */
export function behind(line: Line, begins: string): { readonly text: string; readonly start: number } {
  const rest = line.text.slice(begins.length);
  const lead = /^[:\s]*/.exec(rest)?.[0].length ?? 0;
  return { text: rest.slice(lead), start: begins.length + lead };
}

/** Regulation numbers in brackets at the end of a statement. */
export function withRegulations(text: string): { readonly words: string; readonly regulations: readonly string[] } {
  const found = /^(.*?)\s*\[([^[\]]*)\]$/.exec(text);
  if (found === null) return { words: text, regulations: [] };
  const [, words = "", list = ""] = found;
  return {
    words,
    regulations: list
      .split(",")
      .map((one) => one.trim())
      .filter((one) => one !== ""),
  };
}
