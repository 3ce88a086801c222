import type { Block, SignatureBlock } from "../document/model.ts";
import type { Drawings } from "../pdf/drawings.ts";
import type { recipients, signatures } from "../pdf/sections/closing.ts";
import type { duties } from "../pdf/sections/duties.ts";
import type { instruments, photographs, sources } from "../pdf/sections/evidence.ts";
import type { extent } from "../pdf/sections/extent.ts";
import type { items } from "../pdf/sections/items.ts";
import type { safety } from "../pdf/sections/safety.ts";
import { alert, bullets, facts, heading, paragraph, paragraphIf, said, table } from "./made.ts";

/** What was agreed, what was sampled, and what could not be seen and why. */
export function extentBlocks(d: ReturnType<typeof extent>): readonly Block[] {
  return [
    heading(1, d.title),
    ...facts(d.rows),
    ...(d.sampling.length === 0
      ? []
      : [
          heading(2, d["sampling-title"]),
          table(d["sampling-head"], ["1fr", 16, 16, 17, 34, "1fr"], d.sampling, { right: [1, 2, 3, 4] }),
        ]),
    heading(2, d["limitations-title"]),
    d.limitations.length === 0
      ? paragraph(d["no-limitations"])
      : table(d["limitations-head"], [22, "1fr", "1fr", 34], d.limitations, { rowHead: 1 }),
    paragraph(d.concealed, "small"),
  ];
}

/** Every item that has to be looked at. */
export function itemBlocks(d: ReturnType<typeof items>): readonly Block[] {
  return [
    heading(1, d.title),
    ...d.groups.flatMap(({ title, rows }) => [heading(2, title), table(d.head, ["1fr", 30, 24, 48], rows)]),
  ];
}

/** What was done for the safety of people on site. */
export function safetyBlocks(d: ReturnType<typeof safety>): readonly Block[] {
  return [
    heading(1, d.title),
    ...paragraphIf(d.none),
    ...paragraphIf(d.intro),
    ...(d.columns.length === 0
      ? []
      : [
          {
            kind: "columns",
            columns: d.columns.map((stages) =>
              stages.flatMap(({ title, rows }): readonly Block[] => [
                heading(2, title),
                table(d.head, [d.label, "1fr"], rows),
              ]),
            ),
          } as const,
        ]),
    ...facts(d.rows),
  ];
}

export function instrumentBlocks(d: ReturnType<typeof instruments>): readonly Block[] {
  return [
    heading(1, d.title),
    d.rows.length === 0 ? paragraph(d.none) : table(d.head, ["1fr", 22, 32, 36, "1.3fr"], d.rows),
  ];
}

export function photographBlocks(d: ReturnType<typeof photographs>): readonly Block[] {
  if (d.rows.length === 0) return [];
  return [heading(1, d.title), paragraph(d.intro), table(d.head, [32, "1fr", 38, 30], d.rows)];
}

export function sourceBlocks(d: ReturnType<typeof sources>): readonly Block[] {
  return [
    heading(1, d.title),
    paragraph(d.intro),
    d.rows.length === 0
      ? paragraph(d.none)
      : {
          ...table(d.head, ["1fr", 32, 40], []),
          rows: d.rows.map(({ cells, heavy }) => cells.map((one, i) => (heavy && i === 2 ? [alert(one)] : one))),
        },
    ...(d.edition.length === 0 ? [] : [heading(2, d["edition-title"]), ...bullets(d.edition)]),
  ];
}

export function dutyBlocks(d: ReturnType<typeof duties>): readonly Block[] {
  return [
    heading(1, d.title),
    ...d.intro.map((words) => paragraph(words)),
    ...d.groups.flatMap(({ title, rows }) => [heading(2, title), table(d.head, [32, "1fr", 62], rows)]),
  ];
}

export function recipientBlocks(d: ReturnType<typeof recipients>): readonly Block[] {
  return [
    heading(1, d.title),
    ...d.paragraphs.map((words) => paragraph(words)),
    heading(2, d["cautions-title"]),
    ...bullets(d.cautions),
  ];
}

export function signatureBlocks(d: ReturnType<typeof signatures>, drawings: Drawings): readonly Block[] {
  return [
    heading(1, d.title),
    ...facts(d.conclusion),
    paragraph(d.words),
    ...(d.state === "" ? [] : [paragraph([{ text: d.state, as: "gap" }])]),
    ...d.rows.map(
      ({ as, cells, drawn, typed, words }): SignatureBlock => ({
        kind: "signature",
        as,
        rows: cells.map(([label, one]) => [label, said(one)] as const),
        drawn: drawn === "" ? null : { svg: drawings.svg(drawn), alt: words },
        ...(typed === "" ? {} : { typed }),
      }),
    ),
    ...paragraphIf(d.note, "small"),
    heading(2, d["attachments-title"]),
    table(d["attachments-head"], [34, "1fr"], d.attachments),
  ];
}
