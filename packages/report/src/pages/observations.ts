import type { Block } from "../document/model.ts";
import type { Drawings } from "../pdf/drawings.ts";
import type { ledger } from "../pdf/sections/ledger.ts";
import type { observations } from "../pdf/sections/observations.ts";
import { bullets, facts, heading, paragraph, paragraphIf, together } from "./made.ts";

type Observations = ReturnType<typeof observations>;
type One = Observations["list"][number];

/** Everything that decides and that nobody has answered; nothing where nothing stands open. */
export function ledgerBlocks(d: ReturnType<typeof ledger>): readonly Block[] {
  if (d.list.length === 0) return [];
  return [heading(1, d.title), paragraph(d.intro, "small"), ...bullets(d.list)];
}

/** Every observation with what was recorded, its photographs and its reasons. */
export function observationBlocks(d: Observations, drawings: Drawings): readonly Block[] {
  return [
    heading(1, d.title),
    d.list.length === 0 ? paragraph(d.none) : paragraph(d.intro, "small"),
    ...d.list.flatMap((one) => observationOf(one, drawings)),
  ];
}

function observationOf(one: One, drawings: Drawings): readonly Block[] {
  const { mark, code, number, place, what, details, checks, reasoning } = one;
  return [
    together(
      heading(2, `${code}  ${place}`, {
        beside: number,
        ...(mark === "" ? {} : { mark: { svg: drawings.svg(mark), alt: code, width: 6.4 } }),
      }),
      paragraph(what),
      ...(reasoning.plain === ""
        ? []
        : [{ kind: "frame", as: "aside", blocks: [paragraph(reasoning.plain)] } as const]),
      ...facts(details),
      ...(checks.length === 0 ? [] : [paragraph(one["checks-label"], "lead"), ...bullets(checks)]),
      ...(reasoning.none === "" ? [] : [paragraph([{ text: reasoning.none, as: "gap" }])]),
    ),
    ...photographBlocks(one.photographs),
    ...reasonsOf(reasoning, drawings),
  ];
}

/** Photographs, two in a row. */
function photographBlocks(list: One["photographs"]): readonly Block[] {
  const shown = list.map(({ image, alt, caption }): readonly Block[] => [
    { kind: "figure", image, alt, caption, width: 82 },
  ]);
  return Array.from({ length: Math.ceil(shown.length / 2) }, (_, i) => {
    const pair = shown.slice(2 * i, 2 * i + 2);
    return together({ kind: "columns", columns: pair.length === 2 ? pair : [...pair, []] });
  });
}

function reasonsOf(d: One["reasoning"], drawings: Drawings): readonly Block[] {
  if (d.headline === "") return [];
  return [
    paragraph(d.headline, "lead"),
    ...(d.differs ? [{ kind: "frame", as: "alert", blocks: [paragraph(d.stands)] } as const] : paragraphIf(d.stands)),
    ...d.drawn.map(
      ({ file, alt, width, words, caption }): Block => ({
        kind: "figure",
        image: { svg: drawings.svg(file) },
        alt,
        width: width * MILLIMETRES,
        beside: [...paragraphIf(words), paragraph(caption, "small")],
      }),
    ),
    ...d.parts.map(({ heading: name, lines }) =>
      together(paragraph(name, "lead"), {
        kind: "argument",
        lines: lines.map(({ depth, tag, words }) => ({ depth, tag, words })),
      }),
    ),
  ];
}

/** A point of print in millimetres. */
const MILLIMETRES = 25.4 / 72;
