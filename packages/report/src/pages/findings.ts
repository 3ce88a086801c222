import type { Block } from "../document/model.ts";
import type { Drawings } from "../pdf/drawings.ts";
import type { curves } from "../pdf/sections/curves.ts";
import type { calculations, findings } from "../pdf/sections/findings.ts";
import type { misfits } from "../pdf/sections/misfits.ts";
import { bullets, heading, paragraph, paragraphIf, table, together } from "./made.ts";

type Findings = ReturnType<typeof findings>;
type One = Findings["places"][number]["findings"][number];

/** What is short of its limit, too near to call or not known, with the figures that decide. */
export function findingBlocks(d: Findings, drawings: Drawings): readonly Block[] {
  return [
    heading(1, d.title),
    paragraph(d.intro),
    ...(d.places.length === 0 ? [paragraph(d.none)] : []),
    ...d.places.flatMap(({ heading: place, findings: list }) => [
      heading(2, place),
      ...list.map((one) => findingOf(one, drawings)),
    ]),
  ];
}

function findingOf(one: One, drawings: Drawings): Block {
  const compared: readonly Block[] =
    one.bar === ""
      ? paragraphIf(one.words)
      : [
          paragraph([
            { svg: drawings.svg(one.bar), alt: one["bar-words"], width: 34 },
            { text: `  ${one.words}  ` },
            { text: one.margin, as: "small" },
          ]),
        ];
  return together(
    heading(3, `${one.title}: ${one.verdict}`, one.rule === "" ? {} : { beside: one.rule }),
    ...compared,
    ...one.remarks.map((words) => paragraph(words)),
  );
}

/** Readings that do not agree, shown by choice. */
export function misfitBlocks(d: ReturnType<typeof misfits>, drawings: Drawings): readonly Block[] {
  if (d.list.length === 0) return [];
  return [
    heading(2, d.title),
    paragraph(d.intro),
    ...d.list.map(({ title, drawing, shows, lines }) =>
      together(
        heading(3, title),
        ...(drawing === ""
          ? []
          : [{ kind: "figure", image: { svg: drawings.svg(drawing) }, alt: shows, width: 118 } as const]),
        ...bullets(lines),
      ),
    ),
  ];
}

/** Time-current drawings of circuits in doubt. */
export function curveBlocks(d: ReturnType<typeof curves>, drawings: Drawings): readonly Block[] {
  if (d.list.length === 0) return [];
  const shown = d.list.map(({ caption, file, words }): readonly Block[] => [
    paragraph(caption, "lead"),
    { kind: "figure", image: { svg: drawings.svg(file) }, alt: words, width: 82 },
  ]);
  const pairs = Array.from({ length: Math.ceil(shown.length / 2) }, (_, i) => shown.slice(2 * i, 2 * i + 2));
  return [
    heading(1, d.title),
    paragraph(d.intro),
    ...pairs.map((pair) => together({ kind: "columns", columns: pair.length === 2 ? pair : [...pair, []] })),
    ...paragraphIf(d.more, "small"),
  ];
}

/** How often each calculation came to each verdict. */
export function calculationBlocks(d: ReturnType<typeof calculations>): readonly Block[] {
  return [heading(1, d.title), table(d.head, ["1fr", 40, 13, 15, 17, 11, 18], d.rows, { right: [2, 3, 4, 5, 6] })];
}
