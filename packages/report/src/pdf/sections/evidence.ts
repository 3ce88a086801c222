import { type Source, sourcesOf } from "@good-grounds/core";
import type { InspectionFile } from "@good-grounds/inspection";
import type { ReportInput } from "../../input.ts";
import { BASIS } from "../../locales/en.ts";
import { REPORT } from "../../locales/report-en.ts";
import { type Cell, cell, gap } from "../cell.ts";
import { readingsIn } from "./taken.ts";

type Instrument = InspectionFile["instruments"][number];

/** The instruments with their check and their accuracy. */
export function instruments({ installation }: ReportInput) {
  return {
    title: REPORT.instrumentsTitle,
    head: REPORT.instrumentsHead,
    none: REPORT.noInstruments,
    rows: installation.file.instruments.map(({ id, kind, serial, checked, checkReference, accuracy, leadsNulled }) => {
      const ranges = Object.entries(accuracy ?? {}).map(([range, text]) => `${range.replaceAll("-", " ")} ${text}`);
      return [
        cell(kind),
        cell(serial),
        checked === undefined
          ? gap([REPORT.notChecked, checkReference].filter(Boolean).join(", "))
          : cell([REPORT.day(checked), checkReference].filter(Boolean).join(", ")),
        readsOhms(id, installation.file) ? leads(leadsNulled, installation.file.inspectedOn) : cell("–"),
        ranges.length === 0 ? gap(REPORT.noAccuracy) : cell(ranges.join("; ")),
      ];
    }),
  };
}

/** Whether the resistance of the leads may be in readings of an instrument: what it read in ohms, or nobody said what it read. */
function readsOhms(id: string, { supply, boards, conditions }: InspectionFile): boolean {
  const own = readingsIn([supply, boards, conditions]).filter((one) => one.with === id);
  return own.length === 0 || own.some(({ shown }) => /\d\s*m?Ω/.test(shown));
}

/** When the leads were nulled, and what had crept in before. */
function leads(nulled: Instrument["leadsNulled"], inspectedOn: string): Cell {
  if (nulled === undefined || nulled.length === 0) return gap(REPORT.notNulled);
  return cell(
    nulled
      .map(({ at, showed = "" }) =>
        at.startsWith(inspectedOn) ? REPORT.nulled(at, showed) : REPORT.nulledOn(at, showed),
      )
      .join("; "),
  );
}

/** Photographs by name and hash. */
export function photographs({ installation }: ReportInput) {
  return {
    title: REPORT.photographsTitle,
    intro: REPORT.photographsIntro,
    head: REPORT.photographsHead,
    rows: installation.file.photographs.map(({ name, description, place, taken, sha256 }) => [
      cell(name),
      cell([description, place].filter(Boolean).join(", ")),
      taken === undefined ? gap(REPORT.silence.absent) : cell(REPORT.moment(taken)),
      cell(sha256.slice(0, 16)),
    ]),
  };
}

/** The sources of every figure a conclusion rests on; those from memory first, printed heavier. */
export function sources({ weighing, edition }: ReportInput) {
  const found = new Set<Source>();
  for (const { judgement } of [...weighing.supply, ...weighing.boards.flat(), ...weighing.circuits.flat()]) {
    for (const source of sourcesOf(judgement)) found.add(source);
  }
  const rows = new Map<string, { readonly heavy: boolean; readonly cells: readonly string[] }>();
  for (const { work, formula, doubt, edition: of, basis } of found) {
    const cells = [[work, formula, doubt].filter(Boolean).join("; "), of, BASIS[basis]];
    rows.set(cells.join("\n"), { heavy: basis === "memory", cells });
  }
  return {
    title: REPORT.sourcesTitle,
    intro: REPORT.sourcesIntro,
    none: REPORT.noSources,
    head: REPORT.sourcesHead,
    rows: [...rows]
      .sort(([a, one], [b, other]) => Number(other.heavy) - Number(one.heavy) || (a < b ? -1 : a > b ? 1 : 0))
      .map(([, row]) => row),
    "edition-title": REPORT.editionTitle,
    edition: edition.notes,
  };
}
