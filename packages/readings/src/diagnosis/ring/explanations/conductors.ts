import type { Around, Explanation } from "../explanation.ts";
import type { Banded, Fault, Known } from "../fault.ts";
import { LINE } from "../hypothesis.ts";
import { knownOf } from "../prior.ts";
import type { Uncertain } from "../readings.ts";

export interface OtherCpcSaid {
  readonly kind: "other-cpc";
  /** mm². */
  readonly size: number;
}

export interface OtherLineSaid {
  readonly kind: "other-line";
  /** mm² */
  readonly size: number;
}

export interface OtherMetalSaid {
  readonly kind: "other-metal";
  readonly metal: "copper" | "aluminium";
}

export interface OtherLengthSaid {
  readonly kind: "other-length";
  /** m. */
  readonly metres: number | undefined;
}

export interface ParallelPathSaid {
  readonly kind: "parallel-path";
  /** The protective conductor with what lies beside it, over the line. */
  readonly ratio: Banded;
}

/**
 * A protective conductor of this or that other size than the one written down. As common as one loose joint is once its
 * ohms are paid for: where readings cannot tell the two apart, neither hides the other.
 */
const COMMON_SIZE = 0.0012;
/** Line and neutral of another size than the one written down. */
const COMMON_LINE = 0.001;
const COMMON_METAL = 0.004;
const COMMON_LENGTH = 0.04;
const COMMON_PARALLEL = 0.005;

/** Sizes whose ratio lies further from r2 over r1 and over rn, as a logarithm, are not tried. */
const NOT_THE_SIZE = 0.25;

function cpcOf(size: number, ratio: Uncertain): Fault<OtherCpcSaid> {
  return {
    key: `other-cpc ${size}`,
    common: COMMON_SIZE,
    sizes: [],
    supposes: (known) => ({ ...known, cpcRatio: ratio }),
    says: () => ({ kind: "other-cpc", size }),
  };
}

const isOf = (kind: string) => (base: Around["base"]) => base.hypothesis.faults.some(({ key }) => key.startsWith(kind));
const saysCpc = (base: Around["base"]) => isOf("other-cpc")(base) || isOf("parallel-path")(base);

export const otherCpc: Explanation<OtherCpcSaid> = {
  id: "other-cpc",
  innocent: false,
  tried({ problem: { input }, base }) {
    const { r1, rn, r2, cpcSizes = [] } = input;
    if (saysCpc(base) || r2.bound !== "exact" || !(r2.shown > 0)) return [];
    const read = [r1, rn].filter(({ bound, shown }) => bound === "exact" && shown > 0);
    const isNear = (value: number) =>
      read.some(({ shown }) => Math.abs(Math.log(r2.shown / shown / value)) < NOT_THE_SIZE);
    return cpcSizes
      .filter(({ ratio }) => isNear(ratio.value))
      .map(({ size, ratio }) => ({ fault: cpcOf(size, ratio) }));
  },
};

/** Line and neutral of this size and not the one written down, with so many times the resistance. */
function lineOf(size: number, times: number): Fault<OtherLineSaid> {
  return {
    key: `other-line ${size}`,
    common: COMMON_LINE,
    sizes: [],
    supposes: (known) => ({
      ...known,
      line: scaled(known.line, times),
      cpcRatio: scaled(known.cpcRatio, 1 / times),
    }),
    says: () => ({ kind: "other-line", size }),
  };
}

export const otherLine: Explanation<OtherLineSaid> = {
  id: "other-line",
  innocent: false,
  tried({ problem: { input }, base }) {
    const { r1, rn, r2, lineSizes = [], cpcRatio } = input;
    if (saysCpc(base) || isOf("other-")(base) || r2.bound !== "exact" || cpcRatio === undefined) return [];
    const read = [r1, rn].filter(({ bound, shown }) => bound === "exact" && shown > 0);
    const isNear = (times: number) =>
      read.some(({ shown }) => Math.abs(Math.log((r2.shown * times) / shown / cpcRatio.value)) < NOT_THE_SIZE);
    return lineSizes.filter(({ times }) => isNear(times)).map(({ size, times }) => ({ fault: lineOf(size, times) }));
  },
};

function conductorsOf(metal: "copper" | "aluminium", ratio: number): Fault<OtherMetalSaid> {
  return {
    key: `other-metal ${metal}`,
    common: COMMON_METAL,
    sizes: [],
    supposes: (known) => ({ ...known, line: scaled(known.line, ratio) }),
    says: () => ({ kind: "other-metal", metal }),
  };
}

/** The length is another than the one written down, by a third rather than by half or twice. */
const OTHER_LENGTH = 0.5;

const LENGTH: Fault<OtherLengthSaid> = {
  key: "other-length",
  common: COMMON_LENGTH,
  sizes: [],
  supposes: (known) => ({ ...known, line: { ...known.line, deviation: OTHER_LENGTH * known.line.value } }),
  says: ({ metres }) => ({ kind: "other-length", metres }),
};

/** Deviations by which the line differs from what its length gives, before the length or the metal is doubted. */
const DOUBTED = 1.5;

/** Whether a length and a size are known, and the readings strain what they give. */
function isStrained({ problem: { input }, base }: Around): boolean {
  if (input.length === undefined || input.linePerMetre === undefined) return false;
  const { line } = knownOf(input);
  const off = (base.values[LINE] as number) - Math.log(line.value);
  return Math.abs(off) > (DOUBTED * line.deviation) / line.value;
}

export const otherMetal: Explanation<OtherMetalSaid> = {
  id: "other-metal",
  innocent: false,
  tried(around) {
    const { otherMetal: other } = around.problem.input;
    if (other === undefined || !isStrained(around) || isOf("other-")(around.base)) return [];
    return [{ fault: conductorsOf(other.metal, other.ratio) }];
  },
};

export const otherLength: Explanation<OtherLengthSaid> = {
  id: "other-length",
  innocent: true,
  tried: (around) =>
    isStrained(around) && !isOf("other-length")(around.base) && !isOf("other-metal")(around.base)
      ? [{ fault: LENGTH }]
      : [],
};

/** What lies beside the protective conductor leaves it so much of its ratio to the line, and with what doubt. */
const BESIDE = 0.6;
const BESIDE_DEVIATION = 0.3;

/** Other metal along the run carries with the protective conductor: conduit, armour, the metal of the building. */
const PARALLEL_PATH: Fault<ParallelPathSaid> = {
  key: "parallel-path",
  common: COMMON_PARALLEL,
  sizes: [],
  supposes: (known: Known) => ({
    ...known,
    cpcRatio: { value: known.cpcRatio.value * BESIDE, deviation: known.cpcRatio.value * BESIDE_DEVIATION },
  }),
  says: ({ cpcRatio }) => ({ kind: "parallel-path", ratio: cpcRatio }),
};

/** r2 over r1 lies below what the sizes give by more than this part of it. */
const BELOW = 0.06;

export const parallelPath: Explanation<ParallelPathSaid> = {
  id: "parallel-path",
  innocent: false,
  tried({ problem: { input }, base }) {
    const { r1, rn, r2, cpcRatio } = input;
    if (cpcRatio === undefined || saysCpc(base) || r2.bound !== "exact") return [];
    const line = Math.min(...[r1, rn].filter(({ bound }) => bound === "exact").map(({ shown }) => shown));
    return r2.shown < line * cpcRatio.value * (1 - BELOW) ? [{ fault: PARALLEL_PATH }] : [];
  },
};

function scaled({ value, deviation }: Uncertain, by: number): Uncertain {
  return { value: value * by, deviation: deviation * by };
}
