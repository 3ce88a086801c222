import type { Path } from "@good-grounds/core";
import {
  FIELDS_AT,
  type InspectionFile,
  LINK_IDS,
  LINKS,
  THING_KIND_IDS,
  THING_KINDS,
  type Thing,
} from "@good-grounds/inspection";
import type { ReportInput } from "../../input.ts";
import { REPORT } from "../../locales/report-en.ts";
import { numberOf } from "../../words/observation-number.ts";
import { type Cell, cell, joined } from "../cell.ts";
import { recordedLine, recordedRows } from "../recorded.ts";

const WORDS = REPORT.things;

/** Parts that were recorded one by one, by their kind, each with where it is and everything that was recorded of it. */
export function things({ installation }: ReportInput) {
  const { things: listed, file } = installation;
  return {
    title: WORDS.title,
    intro: WORDS.intro,
    head: WORDS.head,
    kinds: THING_KIND_IDS.flatMap((kind) => {
      const all = listed.ofKind(kind);
      if (all.length === 0) return [];
      return [
        {
          title: WORDS.kind[kind],
          rows: all.map((one) => [nameOf(one), where(one, installation), particularsOf(one, file)]),
        },
      ];
    }),
  };
}

/** What somebody called a thing, else what it is; with how many are alike. */
export function thingName({ kind, name, quantity }: Thing): string {
  const called = name ?? THING_KINDS[kind].noun;
  return quantity === 1 ? called : WORDS.times(called, quantity);
}

function nameOf(one: Thing): Cell {
  return cell(thingName(one));
}

function where(
  { board: at, circuit: within, place, broughtBy, links }: Thing,
  installation: ReportInput["installation"],
): Cell {
  const { boards, things: all, file } = installation;
  const board = boards.find(({ id }) => id === at);
  const circuit = board?.circuits.find(({ id }) => id === within);
  const named = (ids: readonly string[]) => ids.flatMap((id) => all.byId(id) ?? []).map(thingName);
  const linked = LINK_IDS.flatMap((link) => {
    const ids = links[link] ?? [];
    const names =
      LINKS[link] === "circuits"
        ? ids.flatMap((id) => board?.circuits.find((one) => one.id === id)?.designation ?? [])
        : named(ids);
    return names.length === 0 ? [] : [WORDS.link[link](names.join(", "))];
  });
  const number = broughtBy === undefined ? undefined : numberOf(broughtBy, file);
  const parts = [
    board?.name ?? "",
    circuit === undefined ? "" : REPORT.inCircuit(circuit.designation, circuit.description),
    place === undefined ? "" : named([place]).join(", "),
    ...linked,
    number === undefined ? "" : WORDS.broughtBy(number),
  ].filter((part) => part !== "");
  return cell(parts.join("; ") || WORDS.nowhere);
}

/** Everything recorded of a thing, with its openings, its ends and its note. */
function particularsOf(one: Thing, file: InspectionFile): Cell {
  const written = at(file, one.path) as { readonly from?: string; readonly to?: string; readonly note?: string };
  const parts = [
    ...(written.from === undefined ? [] : [cell(WORDS.from(written.from))]),
    ...(written.to === undefined ? [] : [cell(WORDS.to(written.to))]),
    ...recordedParts(recordedRows(THING_KINDS[one.kind].fields, one.state)),
    ...one.openings.map((opening, i) =>
      joined(
        [cell(WORDS.opening(i + 1)), recordedLine(recordedRows(FIELDS_AT["things/enclosures/*/openings/*"], opening))],
        " ",
      ),
    ),
    ...(written.note === undefined ? [] : [cell(written.note)]),
  ];
  return parts.length === 0 ? cell(WORDS.nothing) : joined(parts, "; ");
}

function recordedParts(rows: ReturnType<typeof recordedRows>): readonly Cell[] {
  return rows.length === 0 ? [] : [recordedLine(rows)];
}

/** What stands in the file at a path. */
function at(data: unknown, [step, ...rest]: Path): unknown {
  if (step === undefined) return data;
  return at((data as Readonly<Record<string, unknown>>)[step], rest);
}
