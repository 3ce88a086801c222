import type { Document } from "../document/document.ts";
import { readDocument } from "../read/document.ts";
import type { TextFault } from "../text/fault.ts";
import { type Line, linesOf, spotIn } from "../text/lines.ts";
import { printDocument } from "./document.ts";

/**
 * A text in its one spelling: white space, the spelling of conditions, and the order of the lines that belong to one
 * statement; never the order of statements. It is read again before it comes back: it has to mean the same, keep every
 * note in its order, and be its own one spelling. Otherwise nothing comes back but what is in the way.
 */
export function formatted(
  text: string,
  file: string,
): { readonly text?: string; readonly faults: readonly TextFault[] } {
  const { document, faults } = readDocument(text, file);
  if (document === undefined || faults.length > 0) return { faults };
  const printed = printDocument(document);
  const lost = notesMoved(text, printed, file);
  if (lost.length > 0) return { faults: lost };
  const again = readDocument(printed, file);
  const isSame =
    again.faults.length === 0 &&
    again.document !== undefined &&
    meaningOf(again.document) === meaningOf(document) &&
    printDocument(again.document) === printed;
  return isSame ? { text: printed, faults: [] } : { faults: [unlike(document)] };
}

/** A document as text without where anything stands. */
function meaningOf(document: Document): string {
  return JSON.stringify(document, (name, value: unknown) => (name === "at" ? undefined : value));
}

function unlike({ file, at }: Document): TextFault {
  return {
    file,
    at,
    found: "a text whose one spelling would say something else",
    expected: "the same meaning before and after",
    advice: "nothing was written; this is a fault of the formatter, not of the text",
    within: [],
  };
}

/** Notes that would be lost, as they stand in front of a line which can have none, or come to stand behind a later one. */
function notesMoved(text: string, printed: string, file: string): readonly TextFault[] {
  const left = notesIn(printed, file);
  let at = 0;
  return notesIn(text, file).flatMap(({ note, line }) => {
    const next = left.findIndex((one, i) => i >= at && one.note === note);
    if (next >= 0) {
      at = next + 1;
      return [];
    }
    const isLost = !left.some((one) => one.note === note);
    return [
      {
        file,
        at: line === undefined ? { line: 1, from: 1, to: 2 } : spotIn(line),
        found: `a note in front of "${line?.text ?? ""}"`,
        expected: isLost
          ? "notes in front of a fact, a value, a route, a layer or another statement"
          : "notes in the order in which their lines stand in the one spelling",
        advice: "put it in front of the statement above",
        within: [],
      },
    ];
  });
}

interface Note {
  readonly note: string;
  /** None at the end of a text. */
  readonly line?: Line;
}

function notesIn(text: string, file: string): readonly Note[] {
  const walk = (line: Line): readonly Note[] => [
    ...line.notes.map((note) => ({ note, line })),
    ...line.below.flatMap(walk),
  ];
  const { lines, notesAtEnd } = linesOf(text, file);
  return [...lines.flatMap(walk), ...notesAtEnd.map((note) => ({ note }))];
}
