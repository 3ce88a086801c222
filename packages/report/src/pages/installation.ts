import { type Block, inlines, type TableCell } from "../document/model.ts";
import type { Cell } from "../pdf/cell.ts";
import type { Drawings } from "../pdf/drawings.ts";
import type { boards } from "../pdf/sections/boards.ts";
import type { diagram } from "../pdf/sections/diagram.ts";
import type { origin } from "../pdf/sections/origin.ts";
import type { things } from "../pdf/sections/things.ts";
import { bullets, column, heading, paragraph, paragraphIf, said, table, together } from "./made.ts";

type Boards = ReturnType<typeof boards>;
type Board = Boards["boards"][number];
type Origin = ReturnType<typeof origin>;

/** The supply, its earthing and what stands at the origin. */
export function originBlocks(d: Origin): readonly Block[] {
  const groups = (side: Origin["left" | "right"]): readonly Block[] =>
    side.flatMap(({ title, rows }) => [heading(2, title), table(d.head, [36, "1fr"], rows)]);
  return [
    heading(1, d.title),
    together({ kind: "columns", columns: [groups(d.left), groups(d.right)] }),
    heading(2, d.bonding.title),
    d.bonding.rows.length === 0
      ? paragraph([{ text: d.bonding.none, as: "gap" }])
      : table(d.bonding.head, [30, "1.2fr", "1fr", "0.8fr", 32], d.bonding.rows),
    ...titled(d["methods-title"], d.methods),
    ...paragraphIf(d.taken, "small"),
    ...paragraphIf(d.note),
  ];
}

/** Every board with its circuits, their protection and their readings. */
export function boardBlocks(d: Boards, drawings: Drawings): readonly Block[] {
  const blocks: readonly Block[] = [
    heading(1, d.title),
    paragraph(d.note, "small"),
    paragraph(d["readings-note"], "small"),
    ...d.boards.flatMap((board) => boardOf(d, board, drawings)),
  ];
  return [{ kind: "group", as: "turned", blocks }];
}

function boardOf(d: Boards, board: Board, drawings: Drawings): readonly Block[] {
  const rows = board.particulars.map(([name, value]) => [name, value] as const);
  return [
    heading(2, board.title),
    { kind: "facts", columns: 2, names: 34, rows: rows.map(([name, value]) => [name, said(value)] as const) },
    ...(board.protection.length === 0 ? [paragraph(d["no-circuits"])] : tables(d, board, drawings)),
  ];
}

const PROTECTION = [11, "1fr", 24, 24, 18, 12, 22, 36, 25, 12, 43, 16] as const;
const READINGS = [11, "1fr", 17, 17, 17, 17, 17, 20, 20, 15, 18, 17, 17] as const;
const RCDS = [26, 38, 36, 15, 15, 17, 19, 19, 14, "1fr"] as const;
const FURTHER = [14, "1fr"] as const;
const SIZE = 7.8;

function tables(d: Boards, board: Board, drawings: Drawings): readonly Block[] {
  return [
    heading(3, d["protection-caption"]),
    {
      kind: "table",
      size: SIZE,
      columns: d["protection-head"].map((head, i) => column(head, PROTECTION[i] ?? "1fr", false)),
      rows: board.protection.map((row) => protectionRow(row, drawings)),
      rowHead: 1,
    },
    heading(3, d["readings-caption"]),
    {
      ...table(d["readings-head"], READINGS, board.readings, {
        size: SIZE,
        rowHead: 1,
        right: [2, 3, 4, 5, 6, 7, 8, 11, 12],
      }),
    },
    ...(board.rcds.length === 0
      ? []
      : [heading(3, d["rcds-caption"]), table(d["rcds-head"], RCDS, board.rcds, { size: SIZE })]),
    ...(board.further.length === 0
      ? []
      : [heading(3, d["further-caption"]), table(d["further-head"], FURTHER, board.further, { size: SIZE })]),
    ...paragraphIf(board.taken, "small"),
    ...titled(d["methods-title"], [...board["board-methods"], ...board.methods]),
    ...titled(d["reasons-title"], board.reasons),
    ...bullets([...board["ring-points"], ...board.notes]),
  ];
}

function titled(title: string, lines: readonly string[]): readonly Block[] {
  return lines.length === 0 ? [] : [paragraph(title, "lead"), ...bullets(lines)];
}

function protectionRow(row: Board["protection"][number], drawings: Drawings): readonly TableCell[] {
  const limit = said(row.limit);
  const worst: Cell = row.worst;
  return [
    ...[
      row.no,
      row.name,
      row.serves,
      row.wiring,
      row.method,
      row.phases,
      row.sizes,
      row.device,
      row.rcd,
      row.within,
    ].map(said),
    row.bar === ""
      ? limit
      : [{ svg: drawings.svg(row.bar), alt: row["bar-words"], width: 25 }, { text: " " }, ...inlines(limit)],
    row.heavy ? [{ text: worst.words, as: "strong" }] : said(worst),
  ];
}

/** Parts recorded one by one; nothing where none was. */
export function thingBlocks(d: ReturnType<typeof things>): readonly Block[] {
  if (d.kinds.length === 0) return [];
  return [
    heading(1, d.title),
    paragraph(d.intro, "small"),
    ...d.kinds.flatMap(({ title, rows }) => [heading(2, title), table(d.head, [38, 46, "1fr"], rows)]),
  ];
}

/** The installation as a line diagram. */
export function diagramBlocks(d: ReturnType<typeof diagram>, drawings: Drawings): readonly Block[] {
  return [
    heading(1, d.title),
    ...d.drawings.map(({ file, words }): Block => ({ kind: "figure", image: { svg: drawings.svg(file) }, alt: words })),
    paragraph(d.note, "small"),
  ];
}
