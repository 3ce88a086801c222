import type { OvercurrentDevice, ResidualDevice } from "@good-grounds/inspection";
import { REPORT } from "../../locales/report-en.ts";
import { type Cell, cell, factCell, fullCell, fullFactCell, joined, particulars, valueCell } from "../cell.ts";
import { isSilent } from "../recorded.ts";

/** An overcurrent device as marked: standard, type, rating, what it can break. */
export function deviceMarked({ standard, type, rated, breakingCapacity }: OvercurrentDevice): Cell {
  return particulars([
    [REPORT.standard, factCell(standard)],
    ...(type.kind === "fact" ? [["", factCell(type)] as const] : []),
    [REPORT.rating, valueCell(rated)],
    [REPORT.breaking, valueCell(breakingCapacity)],
  ]);
}

/** What else is known of a device: its energy class, the energy it lets through, what was noted of it. */
export function deviceFurther(device: OvercurrentDevice, note: string | undefined): readonly Cell[] {
  const { energyClass, letThrough, letThroughFrom } = device;
  return [
    ...(isSilent(energyClass) ? [] : [joined([cell(REPORT.energyClass), fullFactCell(energyClass)], " ")]),
    ...(isSilent(letThrough)
      ? []
      : [
          joined([
            joined([cell(REPORT.letThrough), fullCell(letThrough)], " "),
            ...(letThroughFrom === undefined ? [] : [cell(letThroughFrom)]),
          ]),
        ]),
    ...(note === undefined ? [] : [cell(note)]),
  ];
}

/** A residual current device as marked. */
export function rcdMarked(rcd: ResidualDevice): Cell {
  return joined([
    particulars([
      [REPORT.standard, factCell(rcd.standard)],
      [REPORT.type, rcdType(rcd)],
      [REPORT.rating, valueCell(rcd.rated)],
      [REPORT.residual, valueCell(rcd.residual)],
    ]),
    ...delayed(rcd),
  ]);
}

export function rcdType({ type }: ResidualDevice): Cell {
  return type.kind === "fact" ? cell(REPORT.rcdType(type.word)) : fullFactCell(type);
}

/** A time delay, where it is marked; most have none. */
function delayed({ delay }: ResidualDevice): readonly Cell[] {
  return delay.kind === "fact" && delay.word !== "general" ? [cell(REPORT.rcdDelay(delay.word))] : [];
}
