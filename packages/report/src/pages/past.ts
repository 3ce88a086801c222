import type { Block, TableCell } from "../document/model.ts";
import type { Drawings } from "../pdf/drawings.ts";
import type { thenAndNow } from "../pdf/sections/then-and-now.ts";
import { column, heading, paragraph, paragraphIf } from "./made.ts";

type Past = Extract<ReturnType<typeof thenAndNow>, { method: string }>;

/** The comparison with earlier inspections; nothing where none was given. */
export function pastBlocks(d: ReturnType<typeof thenAndNow>, drawings: Drawings): readonly Block[] {
  if (d.title === undefined || d.earlier.length === 0) return [];
  return [
    heading(1, d.title),
    paragraph(d.method, "small"),
    ...d.earlier.flatMap((one) => earlierBlocks(d, one, drawings)),
    ...trendBlocks(d, drawings),
  ];
}

function earlierBlocks(d: Past, one: Past["earlier"][number], drawings: Drawings): readonly Block[] {
  const rows = one.rows.map((row): readonly TableCell[] => [
    row.where,
    row.label,
    row.past,
    row.now,
    [{ svg: drawings.svg(row.step), alt: row.alt, width: 16 }],
    row.words,
  ]);
  return [
    heading(2, one.title),
    ...one.words.map((words) => paragraph(words)),
    ...(rows.length === 0
      ? []
      : [
          {
            kind: "table",
            columns: d.head.map((head, i) => column(head, EARLIER[i] ?? "1fr", i === 2 || i === 3)),
            rows,
          } as const,
        ]),
    ...paragraphIf(one.rest, "small"),
    ...one.left.map((words) => paragraph(words)),
  ];
}

const EARLIER = ["1fr", 30, 19, 19, 18, "1.3fr"] as const;

function trendBlocks(d: Past, drawings: Drawings): readonly Block[] {
  if (d.trends.length === 0 && d.more === "") return [];
  const rows = d.trends.map((row): readonly TableCell[] => [
    row.where,
    [{ svg: drawings.svg(row.line), alt: row.alt, width: 38 }],
    row.words,
  ]);
  return [
    heading(2, d["trends-title"]),
    ...paragraphIf(d.next),
    ...(rows.length === 0
      ? []
      : [
          {
            kind: "table",
            columns: d["trend-head"].map((head, i) => column(head, [42, 42, "1fr" as const][i] ?? "1fr", false)),
            rows,
          } as const,
        ]),
    ...paragraphIf(d.more, "small"),
  ];
}
