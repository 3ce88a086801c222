import type { Verdict } from "@good-grounds/core";
import type { Chance } from "../../examples/simulate/chance.ts";
import { compute } from "../compute.ts";

/**
 * Sound circuits and their readings by hand, drawn apart from the measurement model: a meter that is out by a scale and
 * by digits, leads nulled with something left, contacts, real cable. Figures are written to two decimals without a word
 * on the instrument.
 */
export interface Drawn {
  /** Ω that a bad joint adds to the protective conductor, 0 where the circuit is sound. */
  readonly joint: number;
  /** Size of the protective conductor in place, mm²; 1.5 is written down. */
  readonly cpcInPlace: 1 | 1.5;
  /** The length as written, from the true one, and how it is said to have been found. */
  readonly lengthOf: (metres: number, chance: Chance) => number;
  readonly found?: "taped" | "by-drawing";
}

const R20: Readonly<Record<number, number>> = { 1: 0.0181, 1.5: 0.0121, 2.5: 0.00741 };

const shown = (ohms: number) => `${Math.max(0, ohms).toFixed(2)} Ω`;

/** A continuity tester: ±1.5 % of scale, two digits, leads, contacts. */
function continuity(chance: Chance) {
  const scale = 1 + chance.between(-0.015, 0.015);
  const left = chance.between(-0.02, 0.02);
  return (ohms: number) => shown(ohms * scale + left + chance.between(-0.015, 0.015) + chance.between(0, 0.008));
}

/** A loop tester: ±3 % of scale, three digits, plug contacts. */
function loop(chance: Chance) {
  const scale = 1 + chance.between(-0.03, 0.03);
  return (ohms: number) => shown(ohms * scale + chance.between(-0.03, 0.03) + chance.between(0, 0.015));
}

interface Made {
  readonly line: number;
  readonly cpc: number;
  readonly neutral: number;
  readonly metres: number;
  readonly temperature: number;
  readonly live: number;
}

function cable(metres: number, { joint, cpcInPlace }: Drawn, chance: Chance): Made {
  const make = chance.between(0.945, 0.99);
  const temperature = chance.between(8, 24);
  const warm = 1 + 0.004 * (temperature - 20);
  const own = () => make * (1 + chance.between(-0.015, 0.015)) * warm * metres;
  const line = (R20[2.5] ?? Number.NaN) * own();
  return {
    line,
    neutral: (R20[2.5] ?? Number.NaN) * own(),
    cpc: (R20[cpcInPlace] ?? Number.NaN) * own() + joint,
    metres,
    temperature,
    live: 1 + chance.between(-0.015, 0.015),
  };
}

const CABLE = { line: "2.5 mm²", cpc: "1.5 mm²", material: "copper" } as const;

function lengthWritten(metres: number, { lengthOf, found }: Drawn, chance: Chance): Record<string, string> {
  const written = Math.max(1, lengthOf(metres, chance));
  return { length: `${written.toFixed(1)} m`, ...(found === undefined ? {} : { lengthFound: found }) };
}

const verdictOf = (id: string, given: Record<string, string | string[]>): Verdict =>
  compute(id, given).judgement?.verdict ?? "not-known";

/** A radial of 8 to 60 m: Zs against what stands before it, and R1+R2 against the cable. */
export function radial(drawn: Drawn, chance: Chance): Readonly<Record<"zs-agreement" | "r1r2-length", Verdict>> {
  const made = cable(chance.between(8, 60), drawn, chance);
  const [dead, live] = [continuity(chance), loop(chance)];
  const before = chance.between(0.12, 0.7);
  const r1r2 = dead(made.line + made.cpc);
  // What is loose reads differently in the live test; the joint that is looked for is in that reading alone.
  const zs = live(before + (made.line + made.cpc - drawn.joint) * made.live + drawn.joint);
  const without = drawn.joint > 0 ? dead(made.line + made.cpc - drawn.joint) : r1r2;
  return {
    "zs-agreement": verdictOf("zs-agreement", { zs, zdb: live(before), r1r2: without }),
    "r1r2-length": verdictOf("r1r2-length", {
      ...CABLE,
      r1r2,
      ...lengthWritten(made.metres, drawn, chance),
      temperature: `${(made.temperature + chance.between(-2, 2)).toFixed(0)} °C`,
    }),
  };
}

/** A ring of 30 to 80 m with three points. */
export function ring(drawn: Drawn, chance: Chance): Verdict {
  const made = cable(chance.between(30, 80), drawn, chance);
  const dead = continuity(chance);
  const places = [0.2, 0.5, 0.75];
  const across = (out: number, back: number, x: number) => {
    const [a, b] = [out * x + back * (1 - x), out * (1 - x) + back * x];
    return (a * b) / (a + b);
  };
  return verdictOf("ring-continuity", {
    ...CABLE,
    r1: dead(made.line),
    rn: dead(made.neutral),
    r2: dead(made.cpc),
    crossLineNeutral: places.map((x) => dead(across(made.line, made.neutral, x))),
    crossLineCpc: places.map((x) => dead(across(made.line, made.cpc, x))),
    ...lengthWritten(made.metres, drawn, chance),
    temperature: `${(made.temperature + chance.between(-2, 2)).toFixed(0)} °C`,
  });
}
