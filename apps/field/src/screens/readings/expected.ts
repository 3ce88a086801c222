import { parseWritten, type Unit } from "@good-grounds/core";
import { join } from "../../record/document.ts";
import type { Value } from "../../record/entry.ts";
import type { Record as JobRecord } from "../../record/record.ts";

/** Resistance of 1 m of copper of 1 mm² at 20 °C, in Ω: near enough to tell whether a point has slipped. */
const COPPER = 0.0181;

type Figure = number | undefined;

/** A quantity at a place, as shown or as stated, in the coherent unit. */
export function figureAt(record: JobRecord, path: string, unit: Unit): Figure {
  const value = record.value(path);
  const text = typeof value === "string" ? value : shownOf(value);
  if (text === undefined) return undefined;
  const written = parseWritten(text, unit);
  return "code" in written || written.bound !== "exact" || written.value <= 0 ? undefined : written.value;
}

function shownOf(value: Value | undefined): string | undefined {
  const shown = typeof value === "object" && value !== null && "shown" in value ? value.shown : undefined;
  return typeof shown === "string" ? shown : undefined;
}

/** What other readings of a circuit lead to expect of each reading, roughly. Only used to ask; nothing is judged by it. */
export function expectedOfCircuit(record: JobRecord, board: string, circuit: string): Readonly<Record<string, number>> {
  const ohm = (name: string) => figureAt(record, join(circuit, `readings/${name}`), "ohm");
  const size = (name: string) => figureAt(record, join(circuit, `cable/${name}`), "square-millimetre");
  const [r1, rn, r2, line, cpc] = [ohm("r1"), ohm("rn"), ohm("r2"), size("line"), size("cpc")];
  const length = figureAt(record, join(circuit, "cable/length"), "metre");
  const isRing = record.value(join(circuit, "shape")) === "ring";
  const ratio = line === undefined || cpc === undefined ? undefined : line / cpc;
  const byLength =
    length === undefined || line === undefined || cpc === undefined
      ? undefined
      : COPPER * length * (1 / line + 1 / cpc) * (isRing ? 0.25 : 1);
  const byRing = r1 === undefined || r2 === undefined ? undefined : (r1 + r2) / 4;
  const r1r2 = ohm("r1r2");
  const before = loopAt(record, board);
  const end = length === undefined || line === undefined ? undefined : (COPPER * length) / line;
  return known({
    r1: rn ?? (r2 !== undefined && ratio !== undefined ? r2 / ratio : isRing ? end : undefined),
    rn: r1 ?? (isRing ? end : undefined),
    r2: r1 !== undefined && ratio !== undefined ? r1 * ratio : undefined,
    r1r2: byRing ?? byLength,
    crossLineNeutral: r1 === undefined || rn === undefined ? undefined : (r1 + rn) / 4,
    crossLineCpc: byRing,
    zs: before === undefined || r1r2 === undefined ? undefined : before + r1r2,
  });
}

/** The loop impedance at a board: its own reading, or that of the supply where the board is at the origin. */
export function loopAt(record: JobRecord, board: string): Figure {
  const own = figureAt(record, join(board, "readings/zdb"), "ohm");
  if (own !== undefined || record.value(join(board, "fedFrom")) !== "supply") return own;
  return figureAt(record, "supply/readings/ze", "ohm");
}

/** The fault current that a loop impedance leads to expect, where the voltage is recorded. */
export function faultCurrentFrom(record: JobRecord, loop: Figure): Figure {
  const voltage =
    figureAt(record, "supply/readings/voltage", "volt") ?? figureAt(record, "supply/nominalVoltage", "volt");
  return loop === undefined || voltage === undefined ? undefined : voltage / loop;
}

function known(figures: Readonly<Record<string, Figure>>): Readonly<Record<string, number>> {
  return Object.fromEntries(
    Object.entries(figures).filter((entry): entry is [string, number] => entry[1] !== undefined),
  );
}
