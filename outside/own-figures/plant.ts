import type { InspectionFile } from "@good-grounds/inspection";
import type { Chance } from "../../examples/simulate/chance.ts";

/** A circuit of a job as plain data. */
type Plain = Record<string, unknown> & {
  readonly readings?: Record<string, unknown>;
  readonly cable?: Record<string, unknown>;
};

interface Shown {
  shown: string;
}

/** What is planted: each kind changes a copy of a clean job, or returns undefined where the job has no room for it. */
export const PLANTED = {
  "Zs added up": (file: InspectionFile) => summed(file, "zs"),
  "R1+R2 worked back": (file: InspectionFile) => summed(file, "r1r2"),
  "rows swapped": swapped,
  "R1+R2 of two rows swapped": (file: InspectionFile, chance: Chance) =>
    swapped(file, chance, ["r1r2", "r1", "rn", "r2"]),
  "decimal slipped": slipped,
  "schedule shifted": shifted,
  "R1+R2 column shifted": (file: InspectionFile, chance: Chance) => shifted(file, chance, ["r1r2", "r1", "rn", "r2"]),
} as const;

/** Harder kinds, measured to show where the limits are. */
export const HARDER = {
  "any two rows swapped": (file: InspectionFile, chance: Chance) => swapped(file, chance, undefined, () => true),
  "decimal slipped in R1+R2 or Zs": (file: InspectionFile, chance: Chance) => slipped(file, chance, ["r1r2", "zs"]),
} as const;

/** A clean job whose lengths were paced: each off by up to 15 % either way. */
export function paced(clean: InspectionFile, chance: Chance): InspectionFile {
  const file = copyOf(clean);
  for (const { circuits } of circuitsOf(file)) {
    for (const { cable } of circuits) {
      const length = cable?.length;
      if (cable === undefined || typeof length !== "string") continue;
      cable.length = `${Math.max(1, Math.round(Number.parseFloat(length) * chance.between(0.85, 1.15)))} m`;
    }
  }
  return file;
}

/** The digits of a reading that was taken; undefined where it was not, or shows the end of a range. */
function ohmsOf(reading: unknown): number | undefined {
  const { shown = "" } = (reading ?? {}) as Partial<Shown>;
  return /^[\d.]+ Ω$/.test(shown) ? Number(shown.slice(0, -2)) : undefined;
}

/** The readings of some of the circuits taken over from an earlier file of the same installation. */
export function copiedRows(clean: InspectionFile, earlier: InspectionFile, part: number): InspectionFile {
  const file = copyOf(clean);
  for (const [i, { circuits }] of circuitsOf(file).entries()) {
    for (const [j, circuit] of circuits.entries()) {
      const { readings } = earlier.boards[i]?.circuits[j] ?? {};
      if (j < part * circuits.length) Object.assign(circuit, { readings: JSON.parse(JSON.stringify(readings ?? {})) });
    }
  }
  return file;
}

const circuitsOf = (file: InspectionFile) =>
  file.boards.map((board) => ({ board, circuits: board.circuits as unknown as Plain[] }));

const copyOf = (file: InspectionFile): InspectionFile => JSON.parse(JSON.stringify(file));

/** Every Zs, or every R1+R2, replaced by what the others of its circuit make it. */
function summed(clean: InspectionFile, which: "zs" | "r1r2"): InspectionFile | undefined {
  const file = copyOf(clean);
  let count = 0;
  for (const { board, circuits } of circuitsOf(file)) {
    const before = ohmsOf(board.readings?.zdb);
    for (const { readings } of circuits) {
      const [zs, r1r2] = [ohmsOf(readings?.zs), ohmsOf(readings?.r1r2)];
      if (readings === undefined || before === undefined || zs === undefined || r1r2 === undefined) continue;
      const value = which === "zs" ? before + r1r2 : zs - before;
      if (value < 0) continue;
      count += 1;
      (readings[which] as Shown).shown = `${value.toFixed(2)} Ω`;
    }
  }
  return count < 5 ? undefined : file;
}

/** R1+R2 the cable lets expect, Ω at 20 °C; to choose rows that differ. */
function expectedOf({ cable, shape }: Plain): number {
  const milliohm: Readonly<Record<string, number>> = {
    "1": 18.1,
    "1.5": 12.1,
    "2.5": 7.41,
    "4": 4.61,
    "6": 3.08,
    "10": 1.83,
    "16": 1.15,
  };
  const per = (size: unknown) => milliohm[String(size).split(" ")[0] ?? ""] ?? Number.NaN;
  const length = cable?.length;
  const metres =
    typeof length === "string"
      ? Number(length.split(" ")[0])
      : (Number.parseFloat((length as { from: string }).from) + Number.parseFloat((length as { to: string }).to)) / 2;
  return ((per(cable?.line) + per(cable?.cpc)) * metres * (shape === "ring" ? 0.25 : 1)) / 1000;
}

/** Rows whose readings no instrument could tell apart are no subject: a swap of them is no wrong statement. */
function differ(a: Plain, b: Plain): boolean {
  if ((a.shape === "ring") !== (b.shape === "ring")) return true;
  const [x, y] = [expectedOf(a), expectedOf(b)];
  return Math.abs(x - y) > 0.06 && Math.abs(Math.log(x / y)) > 0.4;
}

const taken = ({ readings }: Plain) => ohmsOf(readings?.r1r2) !== undefined && ohmsOf(readings?.zs) !== undefined;

/** The readings of two rows changed over: all of them, or the named columns. */
function swapped(
  clean: InspectionFile,
  chance: Chance,
  columns?: readonly string[],
  tellApart = differ,
): InspectionFile | undefined {
  const file = copyOf(clean);
  const pairs = circuitsOf(file).flatMap(({ circuits }) =>
    circuits.flatMap((a, i) =>
      circuits.slice(i + 1).flatMap((b) => (taken(a) && taken(b) && tellApart(a, b) ? [[a, b] as const] : [])),
    ),
  );
  const pair = pairs[Math.floor(chance.uniform() * pairs.length)];
  if (pair === undefined) return undefined;
  moveReadings([pair[0], pair[1]], [pair[1].readings, pair[0].readings], columns);
  return file;
}

/** Gives each circuit the readings, or the named columns of them, that stand beside it. */
function moveReadings(
  circuits: readonly Plain[],
  from: readonly Plain["readings"][],
  columns: readonly string[] | undefined,
): void {
  const sources = from.map((readings) => JSON.parse(JSON.stringify(readings ?? {})) as Record<string, unknown>);
  for (const [i, circuit] of circuits.entries()) {
    const source = sources[i] as Record<string, unknown>;
    if (columns === undefined) {
      Object.assign(circuit, { readings: source });
      continue;
    }
    const readings = circuit.readings as Record<string, unknown>;
    for (const column of columns) {
      delete readings[column];
      if (column in source) readings[column] = source[column];
    }
  }
}

/** One resistance of a circuit, 0.1 Ω or more, ten times too large or too small: any of its readings, points of rings too. */
function slipped(clean: InspectionFile, chance: Chance, columns?: readonly string[]): InspectionFile | undefined {
  const file = copyOf(clean);
  const candidates = circuitsOf(file).flatMap(({ circuits }) =>
    circuits.flatMap(({ readings = {} }) => {
      const points = ["crossLineNeutral", "crossLineCpc"].flatMap((key) =>
        ((readings[key] ?? []) as { readonly reading: Shown }[]).map(({ reading }) => reading),
      );
      const single = ["r1r2", "zs", "r1", "rn", "r2"].map((key) => readings[key] as Shown);
      const all = columns === undefined ? [...single, ...points] : columns.map((key) => readings[key] as Shown);
      return all.filter((reading) => (ohmsOf(reading) ?? 0) >= 0.1);
    }),
  );
  const one = candidates[Math.floor(chance.uniform() * candidates.length)];
  const value = ohmsOf(one);
  if (one === undefined || value === undefined) return undefined;
  one.shown = chance.uniform() < 0.5 ? `${(value * 10).toFixed(1)} Ω` : `${(value / 10).toFixed(2)} Ω`;
  return file;
}

/** Every reading of the board with most circuits, or the named columns, one row up or down from some row on. */
function shifted(clean: InspectionFile, chance: Chance, columns?: readonly string[]): InspectionFile | undefined {
  const file = copyOf(clean);
  const [longest] = circuitsOf(file).sort((a, b) => b.circuits.length - a.circuits.length);
  const all = longest?.circuits ?? [];
  const from = Math.floor(chance.uniform() * Math.max(1, all.length - 4));
  const rows = all.slice(from);
  if (rows.length < 4) return undefined;
  const by = chance.uniform() < 0.5 ? 1 : -1;
  const sources = rows.map((_, i) => rows[(i + by + rows.length) % rows.length]?.readings);
  moveReadings(rows, sources, columns);
  return file;
}
