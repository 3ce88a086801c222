import { isKnownFact } from "@good-grounds/core";
import type { Block, Document, Words } from "../../document/model.ts";
import { classificationMark } from "../../drawings/classification-mark.ts";
import type { ReportInput } from "../../input.ts";
import { NOTICE } from "../../locales/danger-notice-en.ts";
import { REPORT } from "../../locales/report-en.ts";
import { capitalised } from "../../pdf/sections/observation-order.ts";
import { earthingOffSince } from "../../pdf/sections/safety.ts";
import { openPointWords } from "../../words/open-point.ts";
import { type Danger, dangersOf, dangersUnspoken } from "../dangers.ts";
import { headOf } from "../head.ts";
import { notices, paper } from "../paper.ts";

/** The notice of danger: what, where, what was done, who was told when and what they said, and what not to do. */
export function dangerNotice(input: ReportInput): Document {
  const { file, nation } = input.installation;
  const head = headOf(input);
  const dangers = dangersOf(input);
  const off = earthingOffSince(file);
  const unspoken = dangersUnspoken(input);
  const isDanger = dangers.length + unspoken.length > 0 || off !== undefined;
  return paper(input, {
    name: NOTICE.name,
    size: 11.5,
    holds: true,
    blocks: [
      { kind: "title", over: isDanger ? NOTICE.over : NOTICE.name, words: head.address },
      ...notices(input, head.draft === "" ? "" : NOTICE.holds),
      ...(isDanger ? [paragraph(NOTICE.intro(head.inspectedOn))] : none(input)),
      ...(off === undefined
        ? []
        : [heading(NOTICE.earthingTitle), frame([{ kind: "paragraph", words: NOTICE.earthing(off) }])]),
      ...dangers.flatMap((danger) => dangerBlocks(danger, input)),
      ...unspoken.flatMap((point) => [
        heading(point.title),
        frame([dont(NOTICE.dontLive)]),
        paragraph(openPointWords(point, input, true)),
        paragraph([{ text: NOTICE.notDone, as: "alert" }]),
      ]),
      heading(NOTICE.emergency),
      {
        kind: "frame",
        as: "stated",
        blocks: [{ kind: "list", entries: NOTICE.emergencyWords(isKnownFact(nation) ? nation.word : undefined) }],
      },
      ...(isDanger ? received(head.firm) : []),
    ],
  });
}

function paragraph(words: Words): Block {
  return { kind: "paragraph", words };
}

function heading(words: string): Block {
  return { kind: "heading", level: 1, words, unlisted: true };
}

function frame(blocks: readonly Block[]): Block {
  return { kind: "frame", as: "alert", blocks };
}

/** What nobody is to do, first of all that is said of a danger. */
function dont(words: string): Block {
  return paragraph([
    { text: `${NOTICE.dont}: `, as: "alert" },
    { text: words, as: "strong" },
  ]);
}

/** A paper that names no danger is no proof that there is none. */
function none({ outcome: { points } }: ReportInput): readonly Block[] {
  const kinds = new Set(points.map(({ kind }) => kind));
  const unseen = kinds.has("nothing-inspected") || kinds.has("nothing-tested");
  return [
    paragraph([{ text: NOTICE.none, as: "strong" }]),
    paragraph(NOTICE.noneMeans),
    ...(unseen ? [paragraph([{ text: NOTICE.nothingInspected, as: "alert" }])] : []),
    ...(points.length > 0 && !unseen ? [paragraph(NOTICE.open(points.length))] : []),
  ];
}

type Row = readonly [name: string, value: Words];

function dangerBlocks({ number, observation: one, standing }: Danger, input: ReportInput): readonly Block[] {
  const { madeSafe, untold, remedy } = one;
  const rows: readonly Row[] = [
    [NOTICE.found, one.what],
    [NOTICE.where, whereWords(one, input)],
    [NOTICE.foundOn, REPORT.day(one.foundOn ?? input.installation.file.inspectedOn)],
    [NOTICE.done, madeSafe === undefined ? [{ text: NOTICE.notDone, as: "alert" }] : REPORT.closed(madeSafe.done)],
    [NOTICE.told, toldWords(madeSafe, untold)],
    ...(madeSafe === undefined ? [] : [[NOTICE.reply, madeSafe.reply ?? [{ text: NOTICE.noReply, as: "gap" }]] as Row]),
    [NOTICE.next, remedy ?? [{ text: NOTICE.noRemedy, as: "gap" }]],
  ];
  return [
    {
      kind: "heading",
      level: 1,
      words: NOTICE.heading(number, capitalised(one.place)),
      // The mark of C1 stands where the inspector classified it so.
      ...(standing.kind === "chosen" ? { mark: { svg: classificationMark("C1"), alt: "C1", width: 8 } } : {}),
      unlisted: true,
    },
    {
      kind: "group",
      as: "together",
      blocks: [
        ...standingBlocks(standing),
        frame([dont(madeSafe === undefined ? NOTICE.dontLive : NOTICE.dontSafe)]),
        { kind: "facts", rows, names: 34 },
      ],
    },
  ];
}

function standingBlocks(standing: Danger["standing"]): readonly Block[] {
  if (standing.kind === "chosen") return [];
  const words =
    standing.kind === "unclassified"
      ? NOTICE.standing.unclassified
      : NOTICE.standing.below(standing.chosen === "none" ? NOTICE.noClass : standing.chosen, standing.reason);
  return [{ kind: "frame", as: "aside", blocks: [paragraph(words)] }];
}

function toldWords(madeSafe: Danger["observation"]["madeSafe"], untold: string | undefined): Words {
  if (madeSafe !== undefined) return NOTICE.toldWho(madeSafe.told, madeSafe.at);
  return untold === undefined ? [{ text: NOTICE.toldUnsaid, as: "gap" }] : NOTICE.untold(untold);
}

/** Place, board and circuit, as far as they are recorded. */
function whereWords(one: Danger["observation"], { installation }: ReportInput): string {
  const board = installation.boards.find(({ id }) => id === one.board);
  const circuit = board?.circuits.find(({ id }) => id === one.circuit);
  return [
    capitalised(one.place),
    ...(board === undefined ? [] : [board.name]),
    ...(circuit === undefined ? [] : [REPORT.inCircuit(circuit.designation, circuit.description).trim()]),
  ].join("; ");
}

/** Room for whoever was given the notice to sign for it. */
function received(firm: readonly string[]): readonly Block[] {
  return [
    heading(NOTICE.received),
    {
      kind: "table",
      size: 10,
      columns: [
        { head: NOTICE.receivedBy, width: "3fr" },
        { head: NOTICE.receivedOn, width: "2fr" },
        { head: NOTICE.given, width: "3fr" },
      ],
      rows: [["", "", firm[0] ?? ""]],
      rowHead: null,
      rowHeight: 16,
    },
  ];
}
