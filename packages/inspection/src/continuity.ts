import { parseWritten, type Unit } from "@good-grounds/core";

/** A reading of a circuit by the name it has in the inspection file, with what stands there. */
export interface ReadingForContinuity {
  readonly name: string;
  readonly value: unknown;
}

/** What the proof of a protective conductor looks at, as the inspection file writes it; anything of it may be missing. */
export interface CircuitForContinuity {
  readonly shape?: unknown;
  readonly cable?: {
    readonly material?: unknown;
    readonly line?: unknown;
    readonly cpc?: unknown;
    readonly cpcArrangement?: unknown;
    readonly length?: unknown;
  };
}

/** Why a protective conductor does not count as proved. Resistances in Ω. */
export type NotProved =
  | { readonly kind: "none" }
  | { readonly kind: "not-taken"; readonly name: string; readonly reason: string }
  /** Beyond the range of the display, at or above any bound. */
  | { readonly kind: "open"; readonly name: string; readonly shown: string }
  /** Above `limit`, and too little is known of the cable to hold the reading against it. */
  | { readonly kind: "too-high"; readonly name: string; readonly shown: string; readonly limit: number }
  | {
      readonly kind: "more-than-cable" | "less-than-cable";
      readonly name: string;
      readonly shown: string;
      readonly expected: readonly [low: number, high: number];
    }
  /** Nothing at all: leads that touch, or that were nulled in the wrong place. */
  | { readonly kind: "nothing"; readonly name: string; readonly shown: string }
  | { readonly kind: "unreadable"; readonly name: string; readonly shown: string };

/** Whether the protective conductor of a circuit is proved. `refuted` numbers the readings that speak against it. */
export type Continuity =
  | { readonly proved: true }
  | { readonly proved: false; readonly why: NotProved; readonly refuted?: readonly number[] };

/**
 * Greatest reading that proves a protective conductor whose cable is not known, Ω. A loop tester draws up to about 25 A:
 * over 2 Ω of protective conductor that lifts metalwork by no more than 50 V, the touch voltage that is usually taken as
 * the limit. With its line conductor in the loop, in the usual pairs of sizes no thicker than twice the protective
 * conductor, 2 Ω become about 3 Ω; 3 Ω are 80 m of the smallest pair, 1.0/1.0 mm². No part of it is the electrode, so TT
 * has the same limit. Basis: common practice; a circuit too long for it is held against its length instead.
 */
const LIMIT: Readonly<Record<string, number>> = { r1r2: 3, r2Only: 2, r2: 2, crossLineCpc: 3 };

/** Readings that prove; those at the points of a ring only speak against it. */
const PROVES: readonly string[] = ["r1r2", "r2Only", "r2"];

/** Resistance of 1 m of 1 mm² at 20 °C, Ω: BS EN 60228, the sizes of final circuits. */
const COPPER = 0.0185;
const ALUMINIUM = 0.0308;

/**
 * A reading fits up to twice what the cable gives, and 0.1 Ω for contacts: lengths are paced or taken from a plan, and
 * conductors may be warm. It fits down to a quarter: below that it was taken at a nearer point, its point has slipped,
 * or metal beside the conductor carried it. Basis: common practice.
 */
const MOST = 2;
const CONTACTS = 0.1;
const LEAST = 0.25;

/** What a display of 0.00 Ω may be rounded from, Ω; a value typed with fewer digits is rounded no further. */
const ROUNDED = 0.005;

/** A length or size whose limits are further apart than this tells too little to hold a reading against. */
const VAGUE = 3;

/**
 * Whether readings prove the protective conductor of a circuit well enough for tests with the circuit live, which put
 * volts on its metalwork (BS 7671 643.1, Electricity at Work Regulations 14). One reading that speaks against it is not
 * outvoted by others.
 */
export function continuityOf(
  circuit: CircuitForContinuity & { readonly readings: readonly ReadingForContinuity[] },
): Continuity {
  const looked = circuit.readings.map((reading) => lookAt(reading, circuit));
  const against = looked.flatMap((said, i) => (isAgainst(said) ? [i] : []));
  const [first] = against;
  if (first !== undefined) return { proved: false, why: looked[first] as NotProved, refuted: against };
  if (looked.includes("proves")) return { proved: true };
  const why = looked.find((said): said is NotProved => typeof said === "object");
  return { proved: false, why: why ?? { kind: "none" } };
}

type Said = "proves" | "silent" | NotProved;

const AGAINST: readonly string[] = ["open", "too-high", "more-than-cable"];

function isAgainst(said: Said): boolean {
  return typeof said === "object" && AGAINST.includes(said.kind);
}

function lookAt({ name, value }: ReadingForContinuity, circuit: CircuitForContinuity): Said {
  const limit = LIMIT[name];
  if (limit === undefined || typeof value !== "object" || value === null) return "silent";
  const { shown, notTaken, reason } = value as { readonly [member: string]: unknown };
  if (typeof notTaken === "string")
    return { kind: "not-taken", name, reason: typeof reason === "string" ? reason : "" };
  if (typeof shown !== "string") return "silent";
  const written = parseWritten(shown, "ohm");
  if ("code" in written) return { kind: "unreadable", name, shown };
  if (written.bound === "above") return { kind: "open", name, shown };
  const expected = expectedOf(name, circuit);
  if (expected === undefined) {
    if (written.value > limit) return { kind: "too-high", name, shown, limit };
    if (written.value <= 0) return { kind: "nothing", name, shown };
  } else {
    const [low, high] = expected;
    if (written.value > MOST * high + CONTACTS) return { kind: "more-than-cable", name, shown, expected };
    if (written.value + Math.min(written.resolution / 2, ROUNDED) < LEAST * low)
      return { kind: "less-than-cable", name, shown, expected };
  }
  return PROVES.includes(name) ? "proves" : "silent";
}

/** What the cable gives for a reading, from the shortest to the longest it may be; undefined where that is not known. */
function expectedOf(name: string, { shape, cable = {} }: CircuitForContinuity): Range | undefined {
  const { cpcArrangement, material } = cable;
  // Armour, sheath and conduit have no resistance that follows from a size.
  if (typeof cpcArrangement === "string" && cpcArrangement !== "in-cable" && cpcArrangement !== "separate")
    return undefined;
  const length = rangeOf(cable.length, "metre");
  const cpc = rangeOf(cable.cpc, "square-millimetre");
  const withLine = name === "r1r2" || name === "crossLineCpc";
  const line = withLine ? rangeOf(cable.line, "square-millimetre") : undefined;
  if (length === undefined || cpc === undefined || (withLine && line === undefined)) return undefined;
  const perMetre = (size: Range | undefined, end: 0 | 1) => (size === undefined ? 0 : 1 / size[end === 0 ? 1 : 0]);
  // Cross-connected, both legs of both halves carry; the protective conductor of a ring is measured from end to end.
  const share = shape === "ring" && name !== "r2" ? 0.25 : 1;
  const of = (end: 0 | 1) =>
    (material === "aluminium" ? ALUMINIUM : COPPER) * share * length[end] * (perMetre(cpc, end) + perMetre(line, end));
  return [of(0), of(1)];
}

type Range = readonly [low: number, high: number];

/** A stated quantity above nothing as its limits, where they are close enough to tell something. */
function rangeOf(value: unknown, unit: Unit): Range | undefined {
  const [low, high] = limitsOf(value).map((text) => {
    const written = typeof text === "string" ? parseWritten(text, unit) : undefined;
    return written === undefined || "code" in written || written.bound !== "exact" ? Number.NaN : written.value;
  });
  return low !== undefined && high !== undefined && low > 0 && high >= low && high <= VAGUE * low
    ? [low, high]
    : undefined;
}

function limitsOf(value: unknown): readonly [unknown, unknown] {
  if (typeof value !== "object" || value === null) return [value, value];
  const { from, to } = value as { readonly [member: string]: unknown };
  return [from, to];
}
