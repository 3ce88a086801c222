import type { FiguresToConfirm, OwnFigures } from "@good-grounds/core";
import type { Installation } from "@good-grounds/inspection";
import { WORDS } from "../../locales/en.ts";
import { OWN_FIGURES } from "../../locales/own-figures-en.ts";
import { placeWords } from "../../words/place.ts";
import { wrapped } from "../wrap.ts";

export interface OwnFiguresOptions {
  readonly width: number;
  /** Everything there is to confirm, all its readings, and what was not looked at. */
  readonly all: boolean;
  /** Id of the earlier file it was held against. */
  readonly earlier: string | undefined;
  /** How many checks there are. */
  readonly checks: number;
}

/** Shown where not everything is asked for. */
const TOP = 3;
const MOST_READINGS = 6;

/** A private look at one's own figures, for a terminal. */
export function renderOwnFigures(
  figures: OwnFigures,
  installation: Installation,
  { width, all, earlier, checks }: OwnFiguresOptions,
): string {
  const { file } = installation;
  const { toConfirm, notLookedAt, otherNotes } = figures;
  const shown = all ? toConfirm : toConfirm.slice(0, TOP);
  const lines = [
    ...wrapped(`${OWN_FIGURES.title} – ${file.id}`, width),
    "─".repeat(width),
    ...wrapped(OWN_FIGURES.private, width),
    ...(file.invented === true ? wrapped(WORDS.invented, width) : []),
    ...(earlier === undefined ? [] : wrapped(OWN_FIGURES.against(earlier), width)),
    ...(toConfirm.length === 0
      ? wrapped(OWN_FIGURES.nothing, width)
      : wrapped(`${OWN_FIGURES.shown(shown.length, toConfirm.length)} ${OWN_FIGURES.means}`, width)),
    ...shown.flatMap((one, i) => ["", ...lookLines(one, i + 1, installation, width, all)]),
    ...(otherNotes.length === 0 ? [] : ["", ...wrapped(OWN_FIGURES.otherNotes, width)]),
    ...otherNotes.flatMap(({ title, note }) => wrapped(`${title}: ${note}`, width, "   ", "     ")),
    "",
    ...(all && notLookedAt.length > 0
      ? [
          ...wrapped(OWN_FIGURES.notLookedAt, width),
          ...notLookedAt.flatMap(({ title, because }) => wrapped(`${title}: ${because}`, width, "   ", "     ")),
        ]
      : wrapped(OWN_FIGURES.lookedAt(checks - notLookedAt.length, checks), width)),
    "",
    ...wrapped(WORDS.competent, width),
  ];
  return `${lines.join("\n")}\n`;
}

function lookLines(
  one: FiguresToConfirm,
  number: number,
  installation: Installation,
  width: number,
  all: boolean,
): readonly string[] {
  const { check, title, test, words, numbers, readings, assumed, innocent, chance, notes } = one;
  const most = all ? readings.length : MOST_READINGS;
  const part = (heading: string, points: readonly string[]) =>
    points.length === 0
      ? []
      : [...wrapped(heading, width, "   "), ...points.flatMap((point) => wrapped(point, width, "   – ", "     "))];
  return [
    ...wrapped(title, width, `${number}  `, "   "),
    ...wrapped(words, width, "   "),
    ...wrapped(`${OWN_FIGURES.test} ${test}`, width, "   "),
    ...part(OWN_FIGURES.numbers, [
      ...numbers.map(({ what, value }) => `${what}: ${value}`),
      chance === null ? OWN_FIGURES.record : OWN_FIGURES.chance(oneIn(chance)),
    ]),
    ...part(OWN_FIGURES.readings, [
      ...readings.slice(0, most).map(({ detail }) => `${placeWords(detail.path, installation)}: ${detail.text}`),
      ...(readings.length > most ? [OWN_FIGURES.more(readings.length - most)] : []),
    ]),
    ...part(OWN_FIGURES.taken, assumed),
    ...part(OWN_FIGURES.innocent, innocent),
    ...(notes.length === 0
      ? wrapped(`${OWN_FIGURES.notes} ${OWN_FIGURES.noNote(check)}`, width, "   ")
      : part(OWN_FIGURES.notes, notes)),
  ];
}

/** A chance in words a person can weigh: "1 in 40,000". */
function oneIn(chance: number): string {
  if (chance < 1e-12) return "1 in a million million";
  const times = Math.max(1, Math.round(Number((1 / chance).toPrecision(2))));
  return `1 in ${String(times).replaceAll(/\B(?=(\d{3})+$)/g, ",")}`;
}
