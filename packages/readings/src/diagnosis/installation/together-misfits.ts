import { type Evidence, type Misfit, type MisfitReading, printQuantity, Reckoner, TERM } from "@good-grounds/core";
import type { Board, Circuit, Installation } from "@good-grounds/inspection";
import { lineUp, logNormal, logSpread, type Suspect } from "./line-up.ts";

import { readingOf, wholeDeviation } from "./noise.ts";

const FAULTY = 0.03;

/** Insulation drifts with damp, warmth and how long the voltage stands: this much, on the natural logarithmic scale. */
const DRIFT = 0.25;

/** A display at the end of its range may stand for anything up to a hundred times as much. */
const BEYOND = 100;

/** Circuits with insulation of their own that lie below this between neutrals are joined by something, Ω. */
const JOINED = 0.5e6;

const print = (value: number) => printQuantity(value, "ohm");
const reckon = new Reckoner(false);

/** Readings of whole boards against those of their circuits, and neutrals that are not apart. */
export function togetherMisfits({ boards }: Installation): readonly Misfit[] {
  return boards
    .flatMap((board) => [
      together(
        board,
        board.insulationLiveEarth,
        (circuit) => circuit.readings.insulationLiveEarth,
        "live conductors to earth",
      ),
      together(board, board.insulationLiveLive, (circuit) => circuit.readings.insulationLiveLive, "line to neutral"),
      ...neutrals(board),
    ])
    .flatMap((one) => one ?? []);
}

/** All circuits together are all circuits in parallel, 1/Σ(1/R), and whatever else hangs on the board. */
function together(
  board: Board,
  whole: Evidence<"ohm">,
  of: (circuit: Circuit) => Evidence<"ohm">,
  between: string,
): Misfit | undefined {
  const reading = readingOf(whole);
  const parts = board.circuits.map(of);
  const known = parts.flatMap((one) => (one.kind === "measured" && one.value > 0 ? [one] : []));
  // A circuit that was not read by itself may have any insulation: then nothing follows.
  if (reading === undefined || !(reading.value > 0) || known.length < 2 || known.length < parts.length)
    return undefined;
  const { value: least } = reckon.inParallel(TERM.combinedInsulation, known);
  const most =
    1 / known.reduce((sum, { value, detail }) => sum + 1 / (detail.bound === "above" ? value * BEYOND : value), 0);
  const deviation = Math.hypot(DRIFT, wholeDeviation(reading) / reading.value);
  const log = Math.log(reading.value);
  const nearest = Math.min(Math.max(log, Math.log(least)), Math.log(most));
  const low = log < nearest;
  const band = { value: least, low: least * Math.exp(-1.96 * deviation), high: most * Math.exp(1.96 * deviation) };
  const path = reading.evidence.detail.path;
  const suspect = (
    id: string,
    innocent: boolean,
    prior: number,
    words: string,
    expects: Suspect["expects"],
  ): Suspect => ({
    id,
    innocent,
    words,
    expects,
    would: [{ path, ...band }],
    log: Math.log(FAULTY * prior) + logSpread(reading.value, 1e3, 1e10) + log,
  });
  // Beside what all circuits give, what is missing has this resistance.
  const beside = 1 / (1 / reading.value - 1 / least);
  const suspects = low
    ? [
        suspect(
          "more-on-the-board",
          false,
          0.4,
          `about ${print(beside)} more hangs on the board than its circuits: wiring before the circuits, a surge device, a circuit nobody listed`,
          { off: `still about ${print(reading.value)} with all circuits off`, again: "each circuit as written" },
        ),
        suspect("circuit-not-as-read", false, 0.3, `one circuit is down to about ${print(beside)} and not as written`, {
          off: "as good as without end with all circuits off",
          again: "one circuit far lower than written",
        }),
        suspect("equipment-connected", true, 0.3, "equipment was connected for the one and not for the other", {
          off: "as good as without end with all circuits off",
          again: "each circuit as written",
        }),
      ]
    : [
        suspect(
          "not-all-connected",
          true,
          0.6,
          "not every circuit took part in the reading of the board: a device or switch was off",
          { off: "as good as without end with all circuits off", again: "each circuit as written" },
        ),
        suspect("circuit-not-as-read", true, 0.3, "one circuit is better than written down", {
          off: "as good as without end with all circuits off",
          again: "one circuit far higher than written",
        }),
      ];
  return lineUp({
    kind: "insulation",
    path: board.path,
    title: `${board.name}: insulation of all circuits together and one by one do not agree, ${between}`,
    formula: "R = 1/Σ(1/Ri)",
    innocentCauses: ["damp that dried or came between the two", "the display had not settled"],
    soundLog: Math.log(1 - FAULTY) + logNormal(log, nearest, deviation),
    suspects,
    nexts: {
      off: "switch every circuit off and read the board by itself",
      again: "read the circuits again one by one, the lowest first",
    },
    readings: [shown(`insulation of the board, ${between}`, reading, band)],
    grounds: [whole, ...known],
  });
}

/** Circuits whose neutrals are not apart: a neutral they share, which an RCD of either trips on. */
function neutrals(board: Board): readonly Misfit[] {
  const low = board.circuits.flatMap((circuit) => {
    const reading = readingOf(circuit.readings.insulationBetweenNeutrals);
    return reading === undefined || reading.value >= JOINED ? [] : [{ circuit, reading }];
  });
  const [first] = low;
  if (first === undefined) return [];
  const { circuit, reading } = first;
  const named = low.map((one) => one.circuit.designation).join(", ");
  const touching = reading.value < 1000;
  const sound = circuit.readings.insulationLiveEarth;
  const usual = sound.kind === "measured" ? sound.value : 100e6;
  const path = reading.evidence.detail.path;
  const suspect = (
    id: string,
    innocent: boolean,
    prior: number,
    words: string,
    expects: Suspect["expects"],
  ): Suspect => ({
    id,
    innocent,
    words,
    expects,
    would: [{ path, value: reading.value, low: reading.value / 3, high: reading.value * 3 }],
    log:
      Math.log(FAULTY * prior) +
      logSpread(Math.max(reading.value, 1), 0.5, JOINED) +
      Math.log(Math.max(reading.value, 1)),
  });
  const misfit = lineUp({
    kind: "between-neutrals",
    path: low.length === 1 ? circuit.path : board.path,
    title: `${board.name}: neutrals that are not apart, circuit ${named}`,
    formula: "neutrals off their bar are insulated from each other",
    innocentCauses: [
      "a neutral that was not taken off the bar",
      "one device switches both circuits, and they are one by design",
    ],
    soundLog: Math.log(1 - FAULTY) + logNormal(Math.log(Math.max(reading.value, 1)), Math.log(usual), 1.5),
    suspects: [
      suspect(
        "borrowed-neutral",
        false,
        touching ? 0.7 : 0.2,
        low.length > 1
          ? `circuits ${named} share a neutral: current of one comes back by the other, and its RCD trips or its neutral is overloaded`
          : `circuit ${named} shares a neutral with another`,
        {
          trace: "the reading rises when a joint between the two is opened",
          load: "current of one circuit in the neutral of the other",
        },
      ),
      suspect("neutral-left-on-bar", true, 0.2, "a neutral was still on the bar", {
        trace: "the reading rises when the neutral is taken off",
        load: "no current in the other's neutral",
      }),
      suspect("damp-between", false, touching ? 0.02 : 0.5, "damp or equipment between the two circuits", {
        trace: "the reading changes as equipment is disconnected",
        load: "no current in the other's neutral",
      }),
    ],
    nexts: {
      load: "with every neutral back in its terminal, load one circuit alone and clamp the insulated neutral of the other",
      trace:
        "isolate both circuits and prove every neutral dead, for either may keep it live; open the joints between them one by one and read again",
    },
    readings: low.map((one) =>
      shown(`N–N, circuit ${one.circuit.designation}`, one.reading, {
        value: usual,
        low: usual / 20,
        high: usual * 20,
      }),
    ),
    grounds: low.map((one) => one.reading.evidence),
  });
  return misfit === undefined ? [] : [misfit];
}

function shown(
  name: string,
  { evidence, value }: NonNullable<ReturnType<typeof readingOf>>,
  band: Pick<MisfitReading, "value" | "low" | "high">,
): MisfitReading {
  const { path, text } = evidence.detail;
  return { name, path, unit: "ohm", shown: text, measured: value, ...band };
}
