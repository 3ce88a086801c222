/**
 * The coherent units of this project, one per kind of quantity. Every number inside the engine is in one of these;
 * other scales (mΩ, kA, ms...) exist only in text, see {@link SCALES}.
 */
export type Unit =
  | "ohm"
  | "ampere"
  | "volt"
  | "second"
  | "metre"
  | "square-millimetre"
  | "celsius"
  | "watt"
  | "hertz"
  | "ratio"
  | "ohm-per-metre"
  | "volt-per-ampere-metre"
  | "ampere-squared-second"
  | "ampere-root-second"
  | "adiabatic-k"
  | "year";

/** How a unit is written when a value is printed without a scale. */
export const UNIT_SYMBOL: Readonly<Record<Unit, string>> = Object.freeze({
  ohm: "Ω",
  ampere: "A",
  volt: "V",
  second: "s",
  metre: "m",
  "square-millimetre": "mm²",
  celsius: "°C",
  watt: "W",
  hertz: "Hz",
  ratio: "",
  "ohm-per-metre": "Ω/m",
  "volt-per-ampere-metre": "V/A/m",
  "ampere-squared-second": "A²s",
  "ampere-root-second": "A√s",
  "adiabatic-k": "A√s/mm²",
  year: "years",
});

/** A written unit: the coherent unit it belongs to and the power of ten that leads there. */
export interface Scale {
  readonly symbol: string;
  readonly unit: Unit;
  readonly exponent: number;
}

/** Spellings that a plain keyboard can type; printed text always uses the proper symbol. */
const ASCII: Readonly<Record<string, readonly string[]>> = {
  Ω: ["ohm", "ohms", "\u2126"],
  mΩ: ["mohm", "m\u2126"],
  kΩ: ["kohm", "k\u2126"],
  MΩ: ["Mohm", "M\u2126"],
  GΩ: ["Gohm"],
  "mm²": ["mm2", "sqmm"],
  "°C": ["C", "degC"],
  "mΩ/m": ["mohm/m"],
  "Ω/m": ["ohm/m"],
  "A²s": ["A2s"],
  "kA²s": ["kA2s"],
  "A√s/mm²": ["k"],
  years: ["year", "y"],
};

const scale = (symbol: string, unit: Unit, exponent = 0): Scale => Object.freeze({ symbol, unit, exponent });

/** Every unit text accepts, by its written symbol. ASCII spellings stand beside the proper ones, for keyboards. */
export const SCALES: ReadonlyMap<string, Scale> = new Map(
  [
    scale("Ω", "ohm"),
    scale("mΩ", "ohm", -3),
    scale("kΩ", "ohm", 3),
    scale("MΩ", "ohm", 6),
    scale("GΩ", "ohm", 9),
    scale("A", "ampere"),
    scale("mA", "ampere", -3),
    scale("kA", "ampere", 3),
    scale("V", "volt"),
    scale("mV", "volt", -3),
    scale("kV", "volt", 3),
    scale("s", "second"),
    scale("ms", "second", -3),
    scale("m", "metre"),
    scale("mm", "metre", -3),
    scale("cm", "metre", -2),
    scale("mm²", "square-millimetre"),
    scale("°C", "celsius"),
    scale("W", "watt"),
    scale("kW", "watt", 3),
    scale("Hz", "hertz"),
    scale("", "ratio"),
    scale("%", "ratio", -2),
    scale("Ω/m", "ohm-per-metre"),
    scale("mΩ/m", "ohm-per-metre", -3),
    scale("V/A/m", "volt-per-ampere-metre"),
    scale("mV/A/m", "volt-per-ampere-metre", -3),
    scale("A²s", "ampere-squared-second"),
    scale("kA²s", "ampere-squared-second", 3),
    scale("A√s/mm²", "adiabatic-k"),
    scale("A√s", "ampere-root-second"),
    scale("years", "year"),
  ].flatMap((s) => [[s.symbol, s] as const, ...(ASCII[s.symbol] ?? []).map((alias) => [alias, s] as const)]),
);
