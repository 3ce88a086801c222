import { readDocument } from "../read/document.ts";
import type { TextFault } from "../text/fault.ts";
import { type Line, linesOf, spotIn } from "../text/lines.ts";
import { printDocument } from "./document.ts";

/**
 * A text in its one spelling: white space and the spelling of conditions, never the order of anything. What was written
 * is read before and after; where a note would be lost nothing comes back but where to put it.
 */
export function formatted(
  text: string,
  file: string,
): { readonly text?: string; readonly faults: readonly TextFault[] } {
  const { document, faults } = readDocument(text, file);
  if (document === undefined || faults.length > 0) return { faults };
  const printed = printDocument(document);
  const lost = notesLost(text, printed, file);
  return lost.length > 0 ? { faults: lost } : { text: printed, faults: [] };
}

/** Notes that stand in front of a line which can have none of its own. */
function notesLost(text: string, printed: string, file: string): readonly TextFault[] {
  const left = notesIn(printed, file).map(({ note }) => note);
  return notesIn(text, file).flatMap(({ note, line }) => {
    const at = left.indexOf(note);
    if (at >= 0) {
      left.splice(at, 1);
      return [];
    }
    return [
      {
        file,
        at: spotIn(line),
        found: `a note in front of "${line.text}"`,
        expected: "notes in front of a fact, a value, a route, a layer or another statement",
        advice: "put it in front of the statement above",
        within: [],
      },
    ];
  });
}

function notesIn(text: string, file: string): readonly { readonly note: string; readonly line: Line }[] {
  const walk = (line: Line): readonly { note: string; line: Line }[] => [
    ...line.notes.map((note) => ({ note, line })),
    ...line.below.flatMap(walk),
  ];
  return linesOf(text, file).lines.flatMap(walk);
}
