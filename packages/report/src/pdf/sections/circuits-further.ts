import { type Board, type Circuit, FIELDS_AT, type InspectionFile } from "@good-grounds/inspection";
import { REPORT } from "../../locales/report-en.ts";
import { type AnyFact, type Cell, cell, fullCell, fullFactCell, joined } from "../cell.ts";
import { isSilent, type Row, recordedLine, recordedRows } from "../recorded.ts";
import { shortNumber } from "./circuit-number.ts";
import { deviceFurther } from "./device-words.ts";

type Written = InspectionFile["boards"][number]["circuits"][number];

const WORDS = REPORT.further;

/** What has no column of its own: each circuit of which something further was recorded, in one line. */
export function circuitsFurther(board: Board, written: readonly Written[]): readonly (readonly Cell[])[] {
  return board.circuits.flatMap((circuit, i) => {
    const parts = partsOf(circuit, written[i]);
    return parts.length === 0 ? [] : [[cell(shortNumber(circuit.designation)), joined(parts, "; ")]];
  });
}

function partsOf(circuit: Circuit, written: Written | undefined): readonly Cell[] {
  const { cable, readings, designCurrent, load, socketOutlets, device } = circuit;
  const device_ = written?.device;
  const note = device_ === undefined || "notKnown" in device_ ? undefined : device_.note;
  const rows: readonly Row[] = [
    ...factRow(WORDS.load, load),
    ...factRow(WORDS.socketOutlets, socketOutlets),
    ...(isSilent(designCurrent) ? [] : [[WORDS.designCurrent, fullCell(designCurrent)] as const]),
    ...recordedRows(FIELDS_AT["boards/*/circuits/*/cable"], { ...cable }, IN_COLUMNS),
    ...(cable.cores === undefined ? [] : [[WORDS.cores, cell(String(cable.cores))] as const]),
    ...(written?.cable?.grouped === undefined
      ? []
      : [
          [
            WORDS.grouped,
            cell(WORDS.grouping(spaced(written.cable.grouped.arrangement), written.cable.grouped.circuits)),
          ] as const,
        ]),
    ...recordedRows({ temperature: FIELDS_AT["boards/*/circuits/*/readings"].temperature }, { ...readings }),
  ];
  return [...(rows.length === 0 ? [] : [recordedLine(rows)]), ...deviceFurther(device, note)];
}

/** Members of a cable that have a column. */
const IN_COLUMNS = ["kind", "material", "line", "neutral", "cpc"];

function factRow(label: string, fact: AnyFact): readonly Row[] {
  return isSilent(fact) ? [] : [[label, spelt(fullFactCell(fact))]];
}

function spelt(one: Cell): Cell {
  return { ...one, words: spaced(one.words) };
}

function spaced(words: string): string {
  return words.replaceAll("-", " ");
}
