import type { Word } from "../document/condition.ts";
import type { Document, Statement } from "../document/document.ts";
import type { TextFault } from "../text/fault.ts";
import { type Line, linesOf, spotIn } from "../text/lines.ts";
import { readContradiction, readDanger, readDeparture } from "./departure.ts";
import { COMMA, Desk, listOf, match } from "./desk.ts";
import { readExample } from "./example.ts";
import { readAmount, readFact } from "./fact.ts";
import { placed } from "./link.ts";
import { readPoint, readState } from "./point.ts";
import { readRoute } from "./route.ts";
import { readFormerly, readGiven, readRemedy, readSaid } from "./said.ts";
import { readBelow } from "./statements.ts";

/** Statements of a topic, by the word they begin with. */
const STATEMENTS: Readonly<Record<string, (line: Line, desk: Desk) => Statement | undefined>> = {
  given: readGiven,
  fact: readFact,
  amount: readAmount,
  contested: readPoint,
  state: readState,
  route: readRoute,
  departure: readDeparture,
  danger: readDanger,
  contradiction: readContradiction,
  said: readSaid,
  remedy: readRemedy,
  example: readExample,
  formerly: readFormerly,
};
/** What topics share; dangers and contradictions of a shared text hold in every topic that asks of what they speak. */
const SHARED = new Set(["fact", "amount", "contested", "state", "danger", "contradiction"]);
/** What may be added to a topic; nothing of it takes anything away. */
const MORE = new Set(["fact", "amount", "contested", "route", "departure", "danger", "said", "remedy", "example"]);

/** Reads one text. What can be read is read; everything wrong is told at once, each at its place. Never throws. */
export function readDocument(
  text: string,
  file: string,
): { readonly document?: Document; readonly faults: readonly TextFault[] } {
  const { lines, faults, notesAtEnd } = linesOf(text, file);
  if (faults.length > 0) return { faults };
  const desk = new Desk(file);
  const [first, second] = lines;
  const { kind, id, title } =
    (first &&
      (match(first, /^(?<kind>topic|shared) (?<id>[a-z0-9][a-z0-9-]*): (?<title>.+)$/) ??
        match(first, /^(?<kind>more) (?<id>[a-z0-9][a-z0-9-]*)$/))) ??
    {};
  if (first === undefined || kind === undefined || id === undefined) {
    const at = first === undefined ? { line: 1, from: 1, to: 2 } : spotIn(first);
    desk.fault(
      at,
      first === undefined ? "an empty text" : `"${first.text.slice(0, 60)}"`,
      '"topic" or "shared", an id, ":", and a title in the first line, or "more" and the id of a topic',
      "one text is one topic, or one page of what topics share",
    );
    return { faults: desk.faults };
  }
  if (second !== undefined)
    desk.fault(
      spotIn(second),
      "a second beginning",
      "everything else below the first line, indented by two spaces",
      "one text is one topic",
    );
  const document = readBody(first, { id, title: title?.text ?? "", kind: kindOf(kind.text) }, desk);
  return { document: { ...document, notesAtEnd }, faults: desk.faults };
}

function kindOf(word: string): Document["kind"] {
  return word === "topic" || word === "more" ? word : "shared";
}

/** What may stand in a text of a kind. */
function mayStand(kind: Document["kind"], begins: string): boolean {
  return kind === "topic" || (kind === "shared" ? SHARED : MORE).has(begins);
}

function readBody(first: Line, head: Pick<Document, "id" | "title" | "kind">, desk: Desk): Document {
  let group: Word | undefined;
  let place: number | undefined;
  let items: readonly Word[] = [];
  const uses: Word[] = [];
  const statements: Statement[] = [];
  const list = (line: Line, begins: string): readonly Word[] => {
    desk.nothingBelow(line);
    const { rest } = match(line, new RegExp(`^${begins} (?<rest>.+)$`)) ?? {};
    return rest === undefined ? (desk.misspelt(line, `"${begins}" and names`) ?? []) : listOf(rest, COMMA);
  };
  const isTopic = head.kind === "topic";
  readBelow(first, desk, [
    ...(!isTopic
      ? []
      : [
          {
            begins: "in",
            read: (line: Line) => {
              desk.nothingBelow(line);
              const { name, number } = match(line, /^in (?<name>[a-z-]+)(?: (?<number>\d{1,4}))?$/) ?? {};
              if (name === undefined)
                desk.misspelt(line, '"in", a part of the installation, and perhaps a number for the order');
              group = name;
              place = number === undefined ? undefined : Number(number.text);
            },
          },
          {
            begins: "answers",
            read: (line: Line) => {
              items = list(line, "answers");
            },
          },
        ]),
    {
      begins: "uses",
      often: true,
      read: (line) => {
        uses.push(...list(line, "uses"));
      },
    },
    ...Object.entries(STATEMENTS)
      .filter(([begins]) => mayStand(head.kind, begins))
      .map(([begins, read]) => ({
        begins,
        often: true,
        read: (line: Line) => {
          const statement = read(line, desk);
          if (statement !== undefined) statements.push(statement);
        },
      })),
  ]);
  if (isTopic && group === undefined)
    desk.fault(
      spotIn(first),
      "a topic of no part of the installation",
      '"in" and a group below the first line',
      "see the folders for the groups there are",
    );
  return {
    ...placed(first),
    file: desk.file,
    ...head,
    ...(group === undefined ? {} : { group }),
    ...(place === undefined ? {} : { place }),
    items,
    uses,
    statements,
    notesAtEnd: [],
  };
}
