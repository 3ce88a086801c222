import { UNIT_SYMBOL, type Unit } from "./unit.ts";

/** Scales a value is printed in, largest first; the first whose size the value reaches is taken. */
const PRINTED: Readonly<Partial<Record<Unit, readonly (readonly [number, string])[]>>> = {
  ohm: [
    [1e6, "MΩ"],
    [1e4, "kΩ"],
    [0, "Ω"],
  ],
  ampere: [
    [1000, "kA"],
    [1, "A"],
    [0, "mA"],
  ],
  second: [
    [0.9995, "s"],
    [0, "ms"],
  ],
  metre: [
    [0.1, "m"],
    [0, "mm"],
  ],
  "ohm-per-metre": [[0, "mΩ/m"]],
  "volt-per-ampere-metre": [[0, "mV/A/m"]],
  ratio: [[0, ""]],
};

const FACTOR: Readonly<Record<string, number>> = {
  MΩ: 1e-6,
  kΩ: 1e-3,
  kA: 1e-3,
  mA: 1e3,
  ms: 1e3,
  mm: 1e3,
  "mΩ/m": 1e3,
  "mV/A/m": 1e3,
};

/** Significant digits that are worth printing where nothing asks for more. */
export const DIGITS = 3;

/** So many significant digits; whole numbers keep all of theirs. */
function digits(magnitude: number, significant: number): string {
  if (magnitude >= 10 ** (significant - 1)) return String(Math.round(magnitude));
  const text = magnitude.toPrecision(significant);
  return text.includes("e") ? String(Number(text)) : text;
}

/** A value with its unit, for people: three significant digits unless more are asked for, "≥" never implied. Infinity prints as "no upper limit". */
export function printQuantity(value: number, unit: Unit, significant: number = DIGITS): string {
  if (value === Number.POSITIVE_INFINITY) return "no upper limit";
  if (value === 0) return `0 ${UNIT_SYMBOL[unit]}`.trim();
  const size = Math.abs(value);
  const symbol = PRINTED[unit]?.find(([from]) => size >= from)?.[1] ?? UNIT_SYMBOL[unit];
  // Counts are plain numbers; "10.0 parts" would claim a digit nobody counted.
  if (unit === "ratio" && Number.isInteger(size)) return `${value < 0 ? "−" : ""}${size}`;
  const scaled = size * (FACTOR[symbol] ?? 1);
  return `${value < 0 ? "−" : ""}${digits(scaled, significant)} ${symbol}`.trim();
}
