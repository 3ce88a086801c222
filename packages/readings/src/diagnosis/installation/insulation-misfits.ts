import {
  type CircuitLoad,
  type Evidence,
  isKnownFact,
  type Measured,
  type Misfit,
  printQuantity,
} from "@good-grounds/core";
import type { Circuit, Installation } from "@good-grounds/inspection";
import { lineUp, logNormal, logSpread, type Suspect } from "./line-up.ts";

/** So many other readings of the same kind are needed before one can be called odd among them. */
const ENOUGH = 3;

/** Sound insulation is spread this much at the least, on the natural logarithmic scale; and above this nothing is low, Ω. */
const LEAST_SPREAD = 1;
const NEVER_LOW = 50e6;

const FAULTY = 0.03;

/** Conductors that touch read less than this, Ω; elements and motors in water that are sound hardly less than that. */
const TOUCHING = 1000;
const BY_NATURE = 0.5e6;

/** Loads with elements that draw damp, or motors that may stand in water. */
const LOW_LOADS: ReadonlySet<CircuitLoad> = new Set(["motor", "water-heater", "cooker", "storage-heating", "heating"]);

const isMineral = ({ cable: { kind } }: Circuit) => isKnownFact(kind) && kind.word === "mineral";
const readsLow = (circuit: Circuit) =>
  isMineral(circuit) || (isKnownFact(circuit.load) && LOW_LOADS.has(circuit.load.word));

interface Row {
  readonly circuit: Circuit;
  readonly reading: Measured<"ohm">;
}

/** A circuit held against the others: middle and spread of their natural logarithms. */
interface AmongOthers extends Row {
  readonly between: string;
  readonly middle: number;
  readonly spread: number;
}

const print = (value: number) => printQuantity(value, "ohm");

/** Circuits whose insulation is far below that of the others of the installation. */
export function insulationMisfits({ circuits }: Installation): readonly Misfit[] {
  return [
    ...lowAmong(circuits, (circuit) => circuit.readings.insulationLiveEarth, "live conductors to earth"),
    ...lowAmong(circuits, (circuit) => circuit.readings.insulationLiveLive, "line to neutral"),
  ];
}

function lowAmong(
  circuits: readonly Circuit[],
  of: (circuit: Circuit) => Evidence<"ohm">,
  between: string,
): readonly Misfit[] {
  const rows = circuits.flatMap((circuit): Row[] => {
    const reading = of(circuit);
    return reading.kind === "measured" && reading.value >= 0 ? [{ circuit, reading }] : [];
  });
  const logs = rows.map(({ reading }) => Math.log(atLeast(reading))).sort((a, b) => a - b);
  if (rows.length <= ENOUGH) return [];
  const middle = median(logs);
  const spread = Math.max(
    LEAST_SPREAD,
    1.4826 * median(logs.map((one) => Math.abs(one - middle)).sort((a, b) => a - b)),
  );
  return rows.flatMap(({ circuit, reading }) => misfit({ circuit, reading, between, middle, spread }) ?? []);
}

/** A display of nought means less than its last digit. */
function atLeast({ value, detail }: Measured<"ohm">): number {
  return Math.max(value, detail.resolution / 2, 1);
}

function median(sorted: readonly number[]): number {
  const half = sorted.length >> 1;
  const upper = sorted[half] ?? 0;
  return sorted.length % 2 === 1 ? upper : ((sorted[half - 1] ?? upper) + upper) / 2;
}

/** A low reading; `value` is what it stands for, Ω, `usual` the middle of the others. */
interface LowReading extends AmongOthers {
  readonly value: number;
  readonly usual: number;
  readonly toEarth: boolean;
}

/** A suspect of a low reading; `is` the value to be expected under it, Ω. */
function suspectOf(
  { reading, value }: LowReading,
  what: Pick<Suspect, "id" | "innocent" | "words" | "expects">,
  prior: number,
  is: number,
): Suspect {
  const density = logSpread(value, 1, NEVER_LOW) + Math.log(value);
  return {
    ...what,
    log: Math.log(FAULTY * prior) + density,
    would: [{ path: reading.detail.path, value: is, low: is / 7, high: is * 7 }],
  };
}

/** What a reading again is to show where the fault is in the conductors, and where it is in what hangs on them. */
const staysLow = ({ reading }: LowReading) => ({
  apart: `still about ${reading.detail.text}`,
  halves: "low in one half only",
});
const rises = ({ usual }: LowReading) => ({
  apart: `towards the others, about ${print(usual)}`,
  halves: "no half low once it is off",
});

function inConductors(read: LowReading): Suspect {
  const { reading, value, toEarth } = read;
  const expects = staysLow(read);
  if (value < TOUCHING || reading.value === 0) {
    const words = toEarth
      ? "a live conductor, as a rule the neutral, touches the protective conductor or metalwork"
      : "line and neutral touch, or a load is switched on";
    return suspectOf(read, { id: "conductors-touch", innocent: false, words, expects }, 0.4, value);
  }
  const words = "damp or damaged insulation at one place of this circuit";
  return suspectOf(read, { id: "damp-or-damaged", innocent: false, words, expects }, toEarth ? 0.5 : 0.25, value);
}

function byWhatIsConnected(read: LowReading): readonly Suspect[] {
  const { circuit, value, usual, toEarth } = read;
  const again = rises(read);
  const madeSo = value >= BY_NATURE && readsLow(circuit) ? (toEarth ? 0.6 : 0.3) : 0.1;
  const equipment = {
    id: "equipment-connected",
    innocent: true,
    words: "equipment that was left connected",
    expects: again,
  };
  const byNature = {
    id: "made-so",
    innocent: true,
    words: "a cable or load that reads low by its nature: mineral insulation, heating elements, a pump in water",
    expects: isMineral(circuit) ? staysLow(read) : { ...again, apart: `${again.apart}, with the load off` },
  };
  return [
    suspectOf(read, equipment, toEarth ? 0.25 : 0.5, usual),
    suspectOf(read, byNature, madeSo, isMineral(circuit) ? value : usual),
  ];
}

function misfit(among: AmongOthers): Misfit | undefined {
  const { circuit, reading, between, middle, spread } = among;
  const { detail } = reading;
  const value = atLeast(reading);
  if (!(value < NEVER_LOW) || detail.bound === "above") return undefined;
  const usual = Math.exp(middle);
  const read: LowReading = { ...among, value, usual, toEarth: between !== "line to neutral" };
  return lineUp({
    kind: "insulation",
    path: circuit.path,
    title: `Circuit ${circuit.designation}: one low insulation resistance among good ones, ${between}`,
    formula: "one circuit against the middle of the others; together 1/Σ(1/R)",
    innocentCauses: [
      "a pump, heater, dimmer, indicator or surge device left in the circuit",
      "a long cable, or mineral insulation with damp ends",
      "a reading taken before the display had settled",
    ],
    soundLog: Math.log(1 - FAULTY) + logNormal(Math.log(value), middle, spread),
    suspects: [inConductors(read), ...byWhatIsConnected(read)],
    nexts: {
      apart:
        "with the circuit isolated, disconnect everything fixed to the circuit, wait until the display settles and read again",
      halves: "with the circuit isolated, open it in the middle and read both halves",
    },
    readings: [
      {
        path: detail.path,
        name: `insulation, ${between}`,
        unit: "ohm",
        shown: detail.text,
        measured: reading.value,
        value: usual,
        low: Math.exp(middle - 1.96 * spread),
        high: Math.exp(middle + 1.96 * spread),
      },
    ],
    grounds: [reading],
  });
}
