import { type Evidence, isKnown, type Unit } from "@good-grounds/core";
import type { Board, Circuit, ResidualDevice } from "@good-grounds/inspection";
import { PAPERS } from "../locales/papers-en.ts";
import { REPORT } from "../locales/report-en.ts";
import { type Cell, cell, factCell, gap, joined, particulars, valueCell } from "../pdf/cell.ts";

/** "BS EN 60898, B, 32 A": the device of a circuit as it is marked. */
export function deviceWords({ device: { standard, type, rated } }: Circuit): Cell {
  return particulars([
    [REPORT.rating, valueCell(rated)],
    ...(type.kind === "fact" ? [["", cell(PAPERS.deviceType(type.word))] as const] : []),
    [REPORT.standard, factCell(standard)],
  ]);
}

/**
 * Every RCD in the way of a circuit's current, nearest first: those of its board, then those ahead of the board. Where one
 * of them is not recorded, or whether there is one, that is a gap.
 */
export function residualWords(circuit: Circuit): Cell {
  const own = ownResidual(circuit, oneResidual, PAPERS.noRcd);
  const ahead = residualAhead(circuit.board, oneResidual);
  return ahead === undefined ? own : joined([own, joined([cell(PAPERS.ahead), ahead], " ")], "; ");
}

/** "30 mA type A": those of its own board in a few words. */
export function residualShort(circuit: Circuit): Cell {
  return ownResidual(circuit, shortResidual, PAPERS.none);
}

/** Those ahead of a board, in a few words; undefined where there is none. */
export function residualAheadShort(board: Board): Cell | undefined {
  return residualAhead(board, shortResidual);
}

type Say = (one: ResidualDevice) => Cell;

function ownResidual({ residual: { devices, unseen, present } }: Circuit, say: Say, none: string): Cell {
  if (devices.length > 0) return joined(devices.map(say), "; ");
  if (unseen !== undefined || present.kind !== "fact" || present.word) return gap(PAPERS.notRecorded);
  return cell(none);
}

/** The RCDs on the way from the origin to a board, nearest first; undefined where it is known that there is none. */
function residualAhead(board: Board, say: Say): Cell | undefined {
  const cells: Cell[] = [];
  const seen = new Set<Circuit>();
  for (let feeder = board.feeder; feeder !== undefined && !seen.has(feeder); feeder = feeder.board.feeder) {
    seen.add(feeder);
    const { devices, present } = feeder.residual;
    if (devices.length > 0) cells.push(...devices.map(say));
    else if (present.kind !== "fact" || present.word) cells.push(gap(PAPERS.notRecorded));
  }
  return cells.length === 0 ? undefined : joined(cells);
}

function shortResidual({ id, residual, type }: ResidualDevice): Cell {
  return joined(
    [
      ...(id === undefined ? [] : [cell(PAPERS.boardRcd(id))]),
      valueCell(residual),
      ...(type.kind === "fact" ? [cell(PAPERS.rcdType(type.word))] : []),
    ],
    " ",
  );
}

function oneResidual({ id, residual, type, delay }: ResidualDevice): Cell {
  return joined([
    cell(id === undefined ? PAPERS.ownRcd : PAPERS.boardRcd(id)),
    particulars([
      [REPORT.residual, valueCell(residual)],
      [REPORT.type, type.kind === "fact" ? cell(PAPERS.rcdType(type.word)) : factCell(type)],
    ]),
    ...(delay.kind === "fact" && delay.word !== "general" ? [cell(REPORT.rcdDelay(delay.word))] : []),
  ]);
}

/** "32 A type B": a device as somebody looks for it in the board; its standard is left to the report. */
export function deviceShort({ device: { type, rated, standard } }: Circuit): Cell {
  const known = type.kind === "fact" ? cell(PAPERS.deviceType(type.word)) : factCell(standard);
  return joined([valueCell(rated), known], " ");
}

/** "2.5 mm², cpc 1.5 mm²": sizes of the live conductors and the cpc, as far as they are known; empty where neither is. */
export function sizesShort({ cable: { line, cpc } }: Circuit): string {
  const live = isKnown(line) ? valueCell(line).words : "";
  const earth = isKnown(cpc) ? `${PAPERS.cpc} ${valueCell(cpc).words}` : "";
  return [live, earth].filter((words) => words !== "").join(", ");
}

/** "flat twin and cpc, 2.5 / 1.5 mm², 18 m": the cable of a circuit, with gaps where nothing is recorded. */
export function cableWords({ cable }: Circuit): Cell {
  const { kind, material, line, cpc, length } = cable;
  return particulars([
    [PAPERS.cableKind, kind.kind === "fact" ? cell(kind.word.replaceAll("-", " ")) : factCell(kind)],
    ...(material.kind === "fact" && material.word !== "copper" ? [["", cell(material.word)] as const] : []),
    [PAPERS.liveSize, sized(PAPERS.live, line)],
    [PAPERS.cpcSize, sized(PAPERS.cpc, cpc)],
    ...(isKnown(length) ? [["", valueCell(length)] as const] : []),
  ]);
}

function sized(name: string, size: Evidence<Unit>): Cell {
  return isKnown(size) ? cell(`${name} ${valueCell(size).words}`) : valueCell(size);
}

/** Readings of a circuit that somebody who puts it right compares with; those that were not taken are left out. */
export function readingsWords({ readings }: Circuit): string {
  return (
    [
      ["r1", readings.r1],
      ["rn", readings.rn],
      ["r2", readings.r2],
      ["R1+R2", readings.r1r2],
      ["R2", readings.r2Only],
      ["IR L–N", readings.insulationLiveLive],
      ["IR L+N–E", readings.insulationLiveEarth],
      ["Zs", readings.zs],
    ] as const
  )
    .flatMap(([name, reading]) => (isKnown(reading) ? [`${name} ${valueCell(reading).words}`] : []))
    .join("; ");
}
