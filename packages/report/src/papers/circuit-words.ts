import { type Evidence, isKnown, type Unit } from "@good-grounds/core";
import type { Circuit, ResidualDevice } from "@good-grounds/inspection";
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

/** Every RCD in the way of a circuit's current within its board, nearest first; that there is none, or why it is not known. */
export function residualWords({ residual }: Circuit): Cell {
  if (residual.devices.length > 0) return joined(residual.devices.map(oneResidual), "; ");
  if (residual.unseen !== undefined || residual.present.kind !== "fact") return gap(PAPERS.notRecorded);
  return residual.present.word ? gap(PAPERS.notRecorded) : cell(PAPERS.noRcd);
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
