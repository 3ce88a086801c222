import { CONDUCTORS, type Conductor, OF_PAIR, type Pair } from "../asked.ts";
import type { Explanation, SeenAtPoint } from "../explanation.ts";
import type { Banded, Fault, Size } from "../fault.ts";
import { OPEN } from "../ring-model.ts";
import { OHMS_OF_JOINT } from "./joint.ts";

export interface SpurSaid {
  readonly kind: "spur";
  readonly point: number;
  readonly metres: Banded | undefined;
  readonly ohms: Banded;
}

export interface TerminalSaid {
  readonly kind: "terminal";
  readonly point: number;
  readonly conductor: Conductor;
  readonly ohms: Banded;
}

export interface SwappedSaid {
  readonly kind: "swapped";
  readonly point: number;
  readonly pair: Pair;
}

export interface OffSaid {
  readonly kind: "off";
  readonly point: number;
  readonly conductor: Conductor;
}

const COMMON_SPUR = 0.03;
const COMMON_TERMINAL = 0.003;
const COMMON_SWAPPED = 0.01;
const COMMON_OFF = 0.002;

/** Length of a spur by parts of the ring. */
const LENGTH_OF_SPUR: Size = { value: 0.1, deviation: 0.3, low: 1e-5, high: 1e4 };

/** The point hangs on a spur. */
export function spurAt(point: number): Fault<SpurSaid> {
  return {
    key: `spur ${point}`,
    common: COMMON_SPUR,
    point,
    sizes: [LENGTH_OF_SPUR],
    bears: (model, values, at) =>
      model.atPoint({ point, ohms: model.whole.map((whole) => whole * (values[at] as number)) }),
    says: ({ band, metres, line }) => ({
      kind: "spur",
      point,
      metres: metres === undefined ? undefined : band(0, metres),
      ohms: band(0, line),
    }),
  };
}

export const spur: Explanation<SpurSaid> = { id: "spur", innocent: true, high: (point) => [spurAt(point)] };

/** A connection at the point, beside the ring, of some resistance. */
export function terminalAt(point: number, conductor: Conductor): Fault<TerminalSaid> {
  return {
    key: `terminal ${point} ${conductor}`,
    common: COMMON_TERMINAL,
    point,
    sizes: [OHMS_OF_JOINT],
    bears: (model, values, at) => model.atPoint({ point, ohms: onlyIn(conductor, values[at] as number) }),
    says: ({ band }) => ({ kind: "terminal", point, conductor, ohms: band(0) }),
  };
}

export const terminal: Explanation<TerminalSaid> = {
  id: "terminal",
  innocent: false,
  high: (point) => CONDUCTORS.map((conductor) => terminalAt(point, conductor)),
};

/** Two conductors at each other's terminals; the ring passes through. */
export function swappedAt(point: number, pair: Pair): Fault<SwappedSaid> {
  return {
    key: `swapped ${point} ${pair}`,
    common: COMMON_SWAPPED,
    point,
    sizes: [],
    bears: (model) => model.atPoint({ point, exchanged: OF_PAIR[pair] }),
    says: () => ({ kind: "swapped", point, pair }),
  };
}

export const swapped: Explanation<SwappedSaid> = {
  id: "swapped",
  innocent: false,
  openAt: (point, seen) =>
    (["line-cpc", "line-neutral", "neutral-cpc"] as const)
      .filter((pair) =>
        pair === "neutral-cpc" ? isOpenFrom("line", seen) : isOpenFrom(pair === "line-cpc" ? "neutral" : "cpc", seen),
      )
      .map((pair) => swappedAt(point, pair)),
};

/** A conductor not connected to its terminal; the ring passes through. */
function offAt(point: number, conductor: Conductor): Fault<OffSaid> {
  return {
    key: `off ${point} ${conductor}`,
    common: COMMON_OFF,
    point,
    sizes: [],
    bears: (model) => model.atPoint({ point, ohms: onlyIn(conductor, OPEN) }),
    says: () => ({ kind: "off", point, conductor }),
  };
}

export const off: Explanation<OffSaid> = {
  id: "off",
  innocent: false,
  openAt: (point, seen) =>
    (["neutral", "cpc", "line"] as const)
      .filter((conductor) => isOpenFrom(conductor, seen))
      .map((conductor) => offAt(point, conductor)),
};

/** Whether what is open at a point is what the lack of this conductor leaves open. A reading not taken says nothing. */
function isOpenFrom(conductor: Conductor, seen: SeenAtPoint): boolean {
  const [neutral, cpc] = [seen["line-neutral"], seen["line-cpc"]];
  if (neutral !== "open" && cpc !== "open") return false;
  if (conductor === "line") return neutral !== "closed" && cpc !== "closed";
  return conductor === "neutral" ? neutral === "open" && cpc !== "open" : cpc === "open" && neutral !== "open";
}

function onlyIn(conductor: Conductor, ohms: number): readonly number[] {
  return CONDUCTORS.map((one) => (one === conductor ? ohms : 0));
}
