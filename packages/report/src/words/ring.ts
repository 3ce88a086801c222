import type { Misfit, NextReading } from "@good-grounds/core";
import type { RingDrawing } from "../drawings/ring-drawing.ts";
import type { ReportMisfit } from "../input.ts";
import { RING } from "../locales/ring-en.ts";
import { marksOf, type RingFaultData } from "../locales/ring-faults-en.ts";
import { misfitWords } from "./misfit.ts";
import type { RingAskedData, RingData } from "./ring-data.ts";
import { nameOf, pointNames, storyId, storyWords } from "./ring-fault.ts";

/** What the readings of a ring say, as readings that do not agree, with its drawing. */
export function ringMisfit(ring: RingData): ReportMisfit {
  const names = pointNames(ring);
  const { circuit, stories, odds, clear, tied, readings, accounts, formula, grounds, designation } = ring;
  const faults = stories[0]?.faults ?? [];
  const misfit: Misfit = {
    kind: "ring",
    path: circuit,
    title: titleOf(faults)(designation),
    odds,
    clear,
    tied,
    toldApart: tied < 2,
    readings: readings.map(({ asked, ...one }) => ({ ...one, unit: "ohm", name: readingName(asked, names) })),
    explanations: stories.map(({ faults, probability, innocent, would }, i) => ({
      id: storyId(faults, names),
      words: [storyWords(faults, names), ...(i === 0 && !accounts ? [RING.noStory] : [])].join("; "),
      share: probability,
      innocent,
      would,
    })),
    next: nextOf(ring, names),
    innocentCauses: RING.innocent,
    formula,
    grounds,
  };
  return ring.points.length === 0 ? misfit : { ...misfit, ring: drawingOf(ring) };
}

function titleOf(faults: readonly RingFaultData[]): (designation: string) => string {
  if (faults.length === 0) return RING.titleSound;
  return faults.every(({ kind }) => kind === "spur") ? RING.titleSpur : RING.title;
}

function readingName({ pair, conductor, point }: RingAskedData, names: readonly string[]): string {
  return point < 0 ? RING.end(conductor ?? "line") : RING.reading(pair, nameOf(point, names));
}

function nextOf({ next, stories }: RingData, names: readonly string[]): NextReading | null {
  if (next === undefined) return null;
  const { asked, expected, separates } = next;
  const words = askedWords(asked, names);
  const id = `ring-${asked.arrangement}`;
  const [first, second] = expected.map((ohms) => RING.expected(ohms < OPEN ? RING.ohms(ohms) : RING.open)) as [
    string,
    string,
  ];
  if (separates === "places") return { id, words: RING.places(words, first, second), expects: [] };
  return {
    id,
    words,
    expects: stories
      .slice(0, 2)
      .map(({ faults }, i) => ({ explanation: storyId(faults, names), words: i === 0 ? first : second })),
  };
}

/** As good as no connection, Ω. */
const OPEN = 1000;

function askedWords(
  { arrangement, pair, terminals, conductor, point }: RingAskedData,
  names: readonly string[],
): string {
  const at = nameOf(point, names);
  switch (arrangement) {
    case "ends-apart":
      return RING.next[arrangement](conductor ?? "line");
    case "cross-connected":
      return RING.next[arrangement](pair, terminals ?? pair, at);
    case "joined-at-one-end":
      return RING.next[arrangement](pair, at);
  }
}

/** The leading explanation with whatever cannot be told from it, and what to read next. */
export function ringSentences(ring: RingData): readonly string[] {
  const { explanations, tied, next } = misfitWords(ringMisfit(ring));
  return [...explanations.slice(0, tied), ...next];
}

/** The ring with the leading explanation marked in it. */
export function drawingOf(ring: RingData): RingDrawing {
  const [first] = ring.stories;
  const faults = first?.faults ?? [];
  const marks = faults.flatMap(marksOf);
  const words =
    marks.length === 0 ? storyWords(faults, pointNames(ring)) : RING.together(marks.map(({ label }) => label));
  return {
    circuit: RING.circuit(ring.designation),
    points: ring.points,
    marks,
    words: RING.drawn(words, RING.share(first?.probability ?? 0)),
    metres: ring.metres ?? Number.NaN,
  };
}
