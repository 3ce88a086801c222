import { RING } from "../locales/ring-en.ts";
import { misfitWords } from "../words/misfit.ts";
import { ringMisfit } from "../words/ring.ts";
import type { RingData } from "../words/ring-data.ts";
import { pointNames } from "../words/ring-fault.ts";
import { padded, wrapped } from "./wrap.ts";

/** One ring for a terminal: every reading beside what the leading explanation makes of it, then the explanations. */
export function renderRing(ring: RingData, width = 80): string {
  const { explanations, next, innocent, rule, assumed } = misfitWords(ringMisfit(ring));
  const lines = [RING.heading, "─".repeat(width), ...pointLines(ring, width)];
  for (const one of [...explanations, ...next]) lines.push(...wrapped(one, width, "", "  "));
  lines.push("", ...[innocent, rule, ...assumed, RING.notClassified].flatMap((one) => wrapped(one, width, "", "  ")));
  return `${lines.join("\n")}\n`;
}

/** Columns for a name at least, and for a figure. */
const LEAST_NAME = 10;
const FIGURE = 10;

function pointLines(ring: RingData, width: number): readonly string[] {
  if (ring.points.length === 0) return [];
  const names = pointNames(ring);
  const room = Math.max(LEAST_NAME, width - 5 * FIGURE);
  const row = (name: string, figures: readonly string[]) =>
    `${padded(wrapped(name, room - 1)[0] ?? "", room)}${figures.map((one) => one.padStart(FIGURE)).join("")}`.trimEnd();
  const { at, lineNeutral, lineCpc, shown, expected } = RING.table;
  return [
    row("", ["", lineNeutral, "", lineCpc]),
    row("", [at, shown, expected, shown, expected]),
    ...ring.points.map((point, i) =>
      row(names[i] ?? "", [
        RING.part(point.at),
        ohms(point.lineNeutral.shown),
        ohms(point.lineNeutral.expected),
        ohms(point.lineCpc.shown),
        ohms(point.lineCpc.expected),
      ]),
    ),
    "",
  ];
}

/** As good as no connection, Ω. */
const OPEN = 1000;

function ohms(value: number): string {
  if (Number.isNaN(value)) return "–";
  return value < OPEN ? RING.ohms(value) : RING.open;
}
