import { wordsOfCell } from "../../document/cell-words.ts";
import type { Block, Document, Inline, TableBlock, Words } from "../../document/model.ts";
import { classificationMark } from "../../drawings/classification-mark.ts";
import type { ReportInput } from "../../input.ts";
import { WORKS } from "../../locales/works-list-en.ts";
import { earthingOffSince } from "../../pdf/sections/safety.ts";
import { shortened } from "../../pdf/sections/shortened.ts";
import { headOf } from "../head.ts";
import { notices, paper } from "../paper.ts";
import { type CircuitOfWork, type WorkItem, type WorkPlace, workPlaces } from "./work-items.ts";

/** The list of works for whoever puts them right, with room to write down what was done. */
export function worksList(input: ReportInput): Document {
  const places = workPlaces(input);
  return paper(input, {
    name: WORKS.title,
    blocks: [
      { kind: "title", over: WORKS.title, words: headOf(input).address },
      ...notices(input),
      ...warnings(input),
      ...(places.length === 0
        ? []
        : [
            { kind: "paragraph", words: WORKS.intro, as: "small" } as const,
            overview(places),
            ...places.flatMap((place) => placeBlocks(place)),
          ]),
    ],
  });
}

/** What keeps the list from being all there is. */
function warnings(input: ReportInput): readonly Block[] {
  const { outcome, installation } = input;
  const kinds = new Set(outcome.points.map(({ kind }) => kind));
  const nothing = workPlaces(input).length === 0 ? [WORKS.nothing] : [];
  const unseen =
    kinds.has("nothing-inspected") || kinds.has("nothing-tested")
      ? [WORKS.nothingInspected]
      : outcome.points.length > 0
        ? [WORKS.notAll(outcome.points.length)]
        : [];
  const off = earthingOffSince(installation.file) === undefined ? [] : [WORKS.earthingOff];
  return [
    ...off.map((words): Block => ({ kind: "frame", as: "alert", blocks: [{ kind: "paragraph", words }] })),
    ...nothing.map((words): Block => ({ kind: "paragraph", words })),
    ...unseen.map((words): Block => ({ kind: "paragraph", words: [{ text: words, as: "strong" }] })),
  ];
}

/** All works on one table: what to bring and where to begin. */
function overview(places: readonly WorkPlace[]): TableBlock {
  const [no, code, board, place, remedy] = WORKS.overviewHead;
  return {
    kind: "table",
    caption: WORKS.overview,
    columns: [
      { head: no, width: 9, align: "right" },
      { head: code, width: 15 },
      { head: board, width: 30 },
      { head: place, width: "2fr" },
      { head: remedy, width: "3fr" },
    ],
    // Worst first over all boards; below they stand board by board.
    rows: places
      .flatMap(({ title, items }) => items.map((item) => ({ title, item })))
      .sort((a, b) => a.item.number - b.item.number)
      .map(({ title, item }) => [
        String(item.number),
        codeWords(item),
        item.board === "" ? WORKS.atNoBoard : shortened(title, 60),
        shortened(item.place, 120),
        remedyShort(item),
      ]),
    rowHead: 0,
  };
}

/** The mark of a classification with its letters; a question mark alone where there is none yet. */
function codeWords({ group, code }: Pick<WorkItem, "group" | "code">): readonly Inline[] {
  if (group === "open") return [{ text: code, as: "strong" }];
  return [
    { svg: classificationMark(group), alt: code, width: 5 },
    { text: ` ${code}`, as: "strong" },
  ];
}

function remedyShort({ remedy, ways: [first] }: WorkItem): Words {
  if (remedy !== "") return shortened(remedy, 160);
  return first === undefined ? [{ text: WORKS.noRemedy, as: "gap" }] : WORKS.fromFacts(shortened(first.words, 160));
}

function placeBlocks({ title, location, items }: WorkPlace): readonly Block[] {
  return [
    { kind: "heading", level: 1, words: title, ...(location === "" ? {} : { beside: location }) },
    ...items.flatMap(itemBlocks),
  ];
}

function itemBlocks(item: WorkItem): readonly Block[] {
  const { group, code, number, meaning } = item;
  return [
    {
      kind: "group",
      as: "together",
      blocks: [
        {
          kind: "heading",
          level: 2,
          words: WORKS.itemHeading(number, item.place),
          ...(group === "open" ? {} : { mark: { svg: classificationMark(group), alt: code, width: 6 } }),
          beside: `${code}: ${meaning}`,
          unlisted: true,
        },
        { kind: "facts", rows: rowsOf(item), names: 34 },
        ...pictures(item),
        ...item.circuits.map(circuitTable),
        toFillIn(number),
      ],
    },
  ];
}

type Row = readonly [name: string, value: Words];

function rowsOf(item: WorkItem): readonly Row[] {
  const { what, madeSafe, below, remedy, ways, regulations, checks, photographs, quantities } = item;
  const optional = (name: string, words: string): readonly Row[] => (words === "" ? [] : [[name, words]]);
  return [
    [WORKS.what, what],
    ...optional(WORKS.madeSafe, madeSafe),
    ...(below === "" ? [] : [[WORKS.belowLabel, [{ text: below, as: "strong" }]] as Row]),
    [WORKS.remedy, remedy === "" ? [{ text: WORKS.noRemedy, as: "gap" }] : [{ text: remedy, as: "strong" }]],
    ...ways.map(({ words, leads }, i): Row => [i === 0 ? WORKS.ways : "", WORKS.way(words, leads)]),
    ...optional(WORKS.quantity, quantityWords(quantities)),
    ...optional(WORKS.regulations, regulations.join(", ")),
    ...optional(WORKS.checks, checks.join("; ")),
    ...optional(WORKS.photographs, photographs.map(({ name, description }) => `${name}: ${description}`).join("; ")),
  ];
}

function quantityWords(quantities: WorkItem["quantities"]): string {
  return quantities.map(({ what, quantity }) => WORKS.counted(quantity, what)).join("; ");
}

/** Photographs that are at hand, three beside each other. */
function pictures({ photographs }: WorkItem): readonly Block[] {
  const shown = photographs.flatMap(({ name, description, image }): Block[] =>
    image === undefined
      ? []
      : [{ kind: "figure", image, alt: description, width: 52, caption: `${name}: ${description}` }],
  );
  const rows = Array.from({ length: Math.ceil(shown.length / 3) }, (_, i) => shown.slice(3 * i, 3 * i + 3));
  return rows.map((row) => ({ kind: "columns", columns: [0, 1, 2].map((i) => row.slice(i, i + 1)) }));
}

/** Device, cable and readings of a circuit as they were found. */
function circuitTable({ name, device, rcd, cable, readings }: CircuitOfWork): Block {
  return {
    kind: "facts",
    names: 34,
    rows: [
      [WORKS.circuitLabel, [{ text: name, as: "strong" }]],
      [WORKS.device, wordsOfCell(device)],
      [WORKS.rcd, wordsOfCell(rcd)],
      [WORKS.cable, wordsOfCell(cable)],
      [WORKS.readings, readings === "" ? [{ text: WORKS.noReadings, as: "gap" }] : readings],
    ],
  };
}

/** Room to write down what was done, what was read then, and by whom. */
function toFillIn(number: number): TableBlock {
  return {
    kind: "table",
    caption: WORKS.afterwards(number),
    columns: [
      { head: WORKS.done, width: "3fr" },
      { head: WORKS.retest, width: "3fr" },
      { head: WORKS.signOff, width: "2fr" },
    ],
    rows: [["", "", ""]],
    rowHead: null,
    rowHeight: 12,
  };
}
