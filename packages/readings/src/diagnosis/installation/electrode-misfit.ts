import { isKnownFact, type Misfit, printQuantity } from "@good-grounds/core";
import type { Supply } from "@good-grounds/inspection";
import { type Reading, readingOf, wholeDeviation } from "./fitted-reading.ts";
import { lineUp, logNormal, logSpread, type Suspect } from "./line-up.ts";
import { about, FAULTY, fallbacks, LOG_SOUND, READ_ZE, shownReading } from "./origin-shown.ts";

const ohms = (value: number) => printQuantity(value, "ohm");

/** What makes Ze another than the electrode gives. */
function suspectsOf(ze: Reading, ra: Reading, deviation: number): readonly Suspect[] {
  const off = ze.value - ra.value;
  const suspect = (
    is: Pick<Suspect, "id" | "innocent" | "words" | "expects">,
    prior: number,
    density: number,
  ): Suspect => ({
    ...is,
    log: Math.log(FAULTY * prior) + density,
    would: [{ path: ze.evidence.detail.path, ...about(ra.value + 1, deviation) }],
  });
  const anything = logSpread(Math.max(0.01, ze.value), 0.005, 1e5);
  const electrodeWrong = (words: string) => ({
    id: "electrode-reading-wrong",
    innocent: true,
    words,
    expects: { ze: "as before", ra: `about ${ohms(ze.value)}` },
  });
  if (off > 0) {
    const joint = {
      id: "joint-in-earthing-conductor",
      innocent: false,
      words: `about ${ohms(off)} between the electrode and the main earthing terminal`,
      expects: { ze: "as before", ra: "as before" },
    };
    const tooLow = "the electrode's reading is too low: spikes too near, or another electrode in parallel";
    return [suspect(joint, 0.35, logSpread(off, 1, 1e4)), suspect(electrodeWrong(tooLow), 0.35, anything)];
  }
  const parallel = {
    id: "earth-in-parallel",
    innocent: true,
    words: "bonding or another earth was connected while Ze was read",
    expects: { ze: "about RA", ra: "as before" },
  };
  const tooHigh = "the electrode's reading is too high: a lead or spike of poor contact";
  return [suspect(parallel, 0.4, anything), suspect(electrodeWrong(tooHigh), 0.2, anything)];
}

/** The electrode of the source is in the loop that Ze goes round, Ω at the most. */
const MOST_OF_SOURCE = 20;

/** Ze is above RA by the source's own electrode, which may be anything up to some twenty ohms. */
function sourceSide(off: number, deviation: number): number {
  const within = Math.min(MOST_OF_SOURCE, Math.max(0, off));
  return logNormal(off, within, deviation) - Math.log(1 + within / 3);
}

/** Ze through an electrode against the electrode itself, which the distributor's side adds to. */
export function electrodeMisfit(supply: Supply): Misfit | undefined {
  const [ze, ra] = [readingOf(supply.ze), readingOf(supply.ra)];
  if (ze === undefined || ra === undefined || !isKnownFact(supply.earthing) || supply.earthing.word !== "TT") return;
  // The electrode's own reading depends on where the spikes stand, some 5 % of it.
  const deviation = Math.hypot(wholeDeviation(ze), wholeDeviation(ra), 0.05 * ra.value, 2);
  return lineUp({
    kind: "supply-loop",
    path: supply.path,
    title: "Ze and the earth electrode do not agree",
    formula: "Ze ≈ RA + source side",
    innocentCauses: ["dry or wet ground between two days", "spikes too near to each other"],
    soundLog: LOG_SOUND + sourceSide(ze.value - ra.value, deviation),
    suspects: suspectsOf(ze, ra, deviation),
    nexts: {
      ze: READ_ZE,
      ra: "read the electrode again with the spikes set further out",
    },
    readings: [
      shownReading("Ze", ze, about(ra.value + 1, deviation)),
      shownReading("RA", ra, about(Math.max(0, ze.value - 1), deviation)),
    ],
    grounds: [ze.evidence, ra.evidence, ...fallbacks(ze, ra)],
  });
}
