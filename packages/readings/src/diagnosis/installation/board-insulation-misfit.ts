import { type Evidence, type ExpectedReading, type Misfit, printQuantity, Reckoner, TERM } from "@good-grounds/core";
import type { Board, Circuit } from "@good-grounds/inspection";
import { type Reading, readingOf, wholeDeviation } from "./fitted-reading.ts";
import { shownInsulation } from "./insulation-shown.ts";
import { lineUp, logNormal, logSpread, type Suspect } from "./line-up.ts";

const FAULTY = 0.03;

/** Insulation drifts with damp, warmth and how long the voltage stands: this much, on the natural logarithmic scale. */
const DRIFT = 0.25;

/** A display at the end of its range may stand for anything up to a hundred times as much. */
const BEYOND = 100;

const print = (value: number) => printQuantity(value, "ohm");
const reckon = new Reckoner(false);

/** The insulation of a board as it was read, and what its circuits give together, Ω. */
interface TogetherRead {
  readonly reading: Reading;
  readonly least: number;
  readonly band: Omit<ExpectedReading, "path">;
}

function suspectOf(
  { reading, band }: TogetherRead,
  is: Pick<Suspect, "id" | "innocent" | "words" | "expects">,
  prior: number,
): Suspect {
  return {
    ...is,
    would: [{ path: reading.evidence.detail.path, ...band }],
    log: Math.log(FAULTY * prior) + logSpread(reading.value, 1e3, 1e10) + Math.log(reading.value),
  };
}

const ALL_OFF = "as good as without end with all circuits off";
const AS_WRITTEN = "each circuit as written";

/** What makes the board lower than its circuits. */
function lower(read: TogetherRead): readonly Suspect[] {
  const { reading, least } = read;
  // Beside what all circuits give, what is missing has this resistance.
  const beside = 1 / (1 / reading.value - 1 / least);
  const more = {
    id: "more-on-the-board",
    innocent: false,
    words: `about ${print(beside)} more hangs on the board than its circuits: wiring before the circuits, a surge device, a circuit nobody listed`,
    expects: { off: `still about ${print(reading.value)} with all circuits off`, again: AS_WRITTEN },
  };
  const circuit = {
    id: "circuit-not-as-read",
    innocent: false,
    words: `one circuit is down to about ${print(beside)} and not as written`,
    expects: { off: ALL_OFF, again: "one circuit far lower than written" },
  };
  const equipment = {
    id: "equipment-connected",
    innocent: true,
    words: "equipment was connected for the one and not for the other",
    expects: { off: ALL_OFF, again: AS_WRITTEN },
  };
  return [suspectOf(read, more, 0.4), suspectOf(read, circuit, 0.3), suspectOf(read, equipment, 0.3)];
}

/** What makes the board higher than its circuits. */
function higher(read: TogetherRead): readonly Suspect[] {
  const missing = {
    id: "not-all-connected",
    innocent: true,
    words: "not every circuit took part in the reading of the board: a device or switch was off",
    expects: { off: ALL_OFF, again: AS_WRITTEN },
  };
  const circuit = {
    id: "circuit-not-as-read",
    innocent: true,
    words: "one circuit is better than written down",
    expects: { off: ALL_OFF, again: "one circuit far higher than written" },
  };
  return [suspectOf(read, missing, 0.6), suspectOf(read, circuit, 0.3)];
}

/** All circuits together are all circuits in parallel, 1/Σ(1/R), and whatever else hangs on the board. */
export function insulationTogether(
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
  const band = { value: least, low: least * Math.exp(-1.96 * deviation), high: most * Math.exp(1.96 * deviation) };
  const read: TogetherRead = { reading, least, band };
  return lineUp({
    kind: "insulation",
    path: board.path,
    title: `${board.name}: insulation of all circuits together and one by one do not agree, ${between}`,
    formula: "R = 1/Σ(1/Ri)",
    innocentCauses: ["damp that dried or came between the two", "the display had not settled"],
    soundLog: Math.log(1 - FAULTY) + logNormal(log, nearest, deviation),
    suspects: log < nearest ? lower(read) : higher(read),
    nexts: {
      off: "switch every circuit off and read the board by itself",
      again: "read the circuits again one by one, the lowest first",
    },
    readings: [shownInsulation(`insulation of the board, ${between}`, reading, band)],
    grounds: [whole, ...known],
  });
}
