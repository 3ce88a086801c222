import type { Misfit } from "@good-grounds/core";
import type { Board } from "@good-grounds/inspection";
import { type Reading, readingOf } from "./fitted-reading.ts";
import { shownInsulation } from "./insulation-shown.ts";
import { lineUp, logNormal, logSpread, type Suspect } from "./line-up.ts";

const FAULTY = 0.03;

/** Circuits with insulation of their own that lie below this between neutrals are joined by something, Ω. */
const JOINED = 0.5e6;

/** Neutrals that touch read less than this, Ω. */
const TOUCHING = 1000;

/** What joins neutrals that are not apart; `named` are the circuits by their designations. */
function suspectsOf(reading: Reading, named: string, several: boolean): readonly Suspect[] {
  const { path } = reading.evidence.detail;
  const touching = reading.value < TOUCHING;
  const suspect = (is: Pick<Suspect, "id" | "innocent" | "words" | "expects">, prior: number): Suspect => ({
    ...is,
    would: [{ path, value: reading.value, low: reading.value / 3, high: reading.value * 3 }],
    log:
      Math.log(FAULTY * prior) +
      logSpread(Math.max(reading.value, 1), 0.5, JOINED) +
      Math.log(Math.max(reading.value, 1)),
  });
  const borrowed = {
    id: "borrowed-neutral",
    innocent: false,
    words: several
      ? `circuits ${named} share a neutral: current of one comes back by the other, and its RCD trips or its neutral is overloaded`
      : `circuit ${named} shares a neutral with another`,
    expects: {
      trace: "the reading rises when a joint between the two is opened",
      load: "current of one circuit in the neutral of the other",
    },
  };
  const load = "no current in the other's neutral";
  const leftOn = {
    id: "neutral-left-on-bar",
    innocent: true,
    words: "a neutral was still on the bar",
    expects: { trace: "the reading rises when the neutral is taken off", load },
  };
  const damp = {
    id: "damp-between",
    innocent: false,
    words: "damp or equipment between the two circuits",
    expects: { trace: "the reading changes as equipment is disconnected", load },
  };
  return [suspect(borrowed, touching ? 0.7 : 0.2), suspect(leftOn, 0.2), suspect(damp, touching ? 0.02 : 0.5)];
}

/** Circuits whose neutrals are not apart: a neutral they share, which an RCD of either trips on. */
export function neutralsMisfit(board: Board): Misfit | undefined {
  const low = board.circuits.flatMap((circuit) => {
    const reading = readingOf(circuit.readings.insulationBetweenNeutrals);
    return reading === undefined || reading.value >= JOINED ? [] : [{ circuit, reading }];
  });
  const [first] = low;
  if (first === undefined) return undefined;
  const { circuit, reading } = first;
  const named = low.map((one) => one.circuit.designation).join(", ");
  const sound = circuit.readings.insulationLiveEarth;
  const usual = sound.kind === "measured" ? sound.value : 100e6;
  return lineUp({
    kind: "between-neutrals",
    path: low.length === 1 ? circuit.path : board.path,
    title: `${board.name}: neutrals that are not apart, circuit ${named}`,
    formula: "neutrals off their bar are insulated from each other",
    innocentCauses: [
      "a neutral that was not taken off the bar",
      "one device switches both circuits, and they are one by design",
    ],
    soundLog: Math.log(1 - FAULTY) + logNormal(Math.log(Math.max(reading.value, 1)), Math.log(usual), 1.5),
    suspects: suspectsOf(reading, named, low.length > 1),
    nexts: {
      load: "with every neutral back in its terminal, load one circuit alone and clamp the insulated neutral of the other",
      trace:
        "isolate both circuits and prove every neutral dead, for either may keep it live; open the joints between them one by one and read again",
    },
    readings: low.map((one) =>
      shownInsulation(`N–N, circuit ${one.circuit.designation}`, one.reading, {
        value: usual,
        low: usual / 20,
        high: usual * 20,
      }),
    ),
    grounds: low.map((one) => one.reading.evidence),
  });
}
