import type { Evidence, Unit } from "@good-grounds/core";
import { type Board, FIELDS_AT, type InspectionFile, type ResidualDevice } from "@good-grounds/inspection";
import { REPORT } from "../../locales/report-en.ts";
import { type Cell, cell, fullCell, fullFactCell, gap, joined, particulars, valueCell } from "../cell.ts";
import { isSilent, readingCell, recordedLine, recordedRows } from "../recorded.ts";
import { shortNumber } from "./circuit-number.ts";
import { rcdType } from "./device-words.ts";

type Written = NonNullable<InspectionFile["boards"][number]["rcds"]>[number] | { readonly note?: string | undefined };

const WORDS = REPORT.rcds;

/** Every RCD of a board once, with what is marked on it, what its tests showed and which circuits it serves. */
export function rcdsOf(
  board: Board,
  written: InspectionFile["boards"][number] | undefined,
): readonly (readonly Cell[])[] {
  const shared = board.rcds.map((rcd, i) => {
    const circuits = board.circuits.filter(({ residual }) => residual.devices.includes(rcd));
    const serves =
      rcd.servesWholeBoard === true
        ? REPORT.board.wholeBoard
        : WORDS.circuits(circuits.map(({ designation }) => shortNumber(designation)));
    return row(WORDS.shared(rcd.id ?? String(i + 1)), serves, rcd, written?.rcds?.[i]);
  });
  const own = board.circuits.flatMap((circuit, i) => {
    const rcd = circuit.residual.devices.find((one) => !board.rcds.includes(one));
    if (rcd === undefined) return [];
    const said = written?.circuits[i]?.rcd;
    const entry = typeof said === "object" && "own" in said ? said.own : undefined;
    return [row(WORDS.own(shortNumber(circuit.designation)), circuit.description, rcd, entry)];
  });
  return [...shared, ...own];
}

function row(name: string, serves: string, rcd: ResidualDevice, written: Written | undefined): readonly Cell[] {
  return [
    cell(name),
    cell(serves),
    particulars([
      [REPORT.standard, fullFactCell(rcd.standard)],
      [REPORT.type, rcdType(rcd)],
    ]),
    marked(rcd.rated),
    marked(rcd.residual),
    isSilent(rcd.delay) ? gap(REPORT.silence.absent) : fullFactCell(rcd.delay, WORDS.delay),
    reading(rcd.timeAtRated),
    reading(rcd.timeAtFive),
    fullFactCell(rcd.button, REPORT.trips),
    further(rcd, written),
  ];
}

/** A marked value, or why it is not known. */
function marked(value: Evidence<Unit>): Cell {
  return isSilent(value) ? gap(REPORT.silence.absent) : fullCell(value);
}

/** A time with how it was taken, without its band: limits are compared elsewhere. */
function reading(time: ResidualDevice["timeAtRated"]): Cell {
  if (time.kind !== "measured") return isSilent(time) ? cell("–") : readingCell(time);
  const { method, note } = time.detail.taken;
  return joined(
    [valueCell(time), ...[method, note].flatMap((words) => (words === undefined ? [] : [cell(words)]))],
    "; ",
  );
}

function further(rcd: ResidualDevice, written: Written | undefined): Cell {
  const state = recordedRows(STATE, { ...rcd });
  const parts = [
    ...(state.length === 0 ? [] : [recordedLine(state)]),
    ...(rcd.whyNotTested === undefined ? [] : [cell(rcd.whyNotTested)]),
    ...(written?.note === undefined ? [] : [cell(written.note)]),
  ];
  return parts.length === 0 ? cell("") : joined(parts, "; ");
}

const { direction, backfed, testability } = FIELDS_AT["boards/*/rcds/*"];
const STATE = { direction, backfed, testability };
