import { type NotKnown, type Published, published, TERM } from "@good-grounds/core";
import { notTabulated } from "../not-tabulated.ts";
import { source } from "../sources.ts";
import { breakerType } from "./breaker-types.ts";
import { deviceWords, type MarkedDevice } from "./device.ts";
import { FUSES, type FuseRow } from "./fuses/index.ts";

type Answer = Published<"ampere"> | NotKnown<"ampere">;

/** Voltage of the fault loop the printed impedances rest on: 230 V × 0.95. */
const LOOP_VOLTAGE = 218.5;

/** Ratings a breaker of these standards can have, A. */
const GREATEST_BREAKER = 125;

const ANSWERS = new Map<string, Answer>();

/**
 * The current in A that operates a device within a time in s. Circuit-breakers: the multiple at which their type trips
 * at once, for every rating up to 125 A. Fuses: the known points at 0.4 s and 5 s; for a time between them the point of
 * the shorter time, which is on the safe side. Shorter times than 0.4 s have no published point here.
 */
export function operatingCurrent(device: MarkedDevice, seconds: number): Answer {
  const key = `${device.standard}|${device.type}|${device.rated}|${seconds}`;
  const held = ANSWERS.get(key);
  if (held !== undefined) return held;
  const answer = find(device, seconds);
  // Ratings come from files; the cache must not grow with hostile ones.
  if (ANSWERS.size < 10_000) ANSWERS.set(key, answer);
  return answer;
}

function find(device: MarkedDevice, seconds: number): Answer {
  const row = `${deviceWords(device)}, within ${seconds} s`;
  if (!(seconds > 0 && device.rated > 0)) return notTabulated(TERM.operatingCurrent, "the device tables", row);
  const breaker = breakerType(device.standard, device.type);
  if (breaker !== undefined) {
    if (seconds < 0.04 || device.rated > GREATEST_BREAKER)
      return notTabulated(TERM.operatingCurrent, "Table 41.3", row);
    const slow = breaker.within5s;
    const [multiple, from] =
      slow !== undefined && seconds >= 5 ? [slow.multiple, slow.source] : [breaker.most, breaker.source];
    return published(TERM.operatingCurrent, multiple * device.rated, from, `${row}: ${multiple} × In`);
  }
  const fuse = FUSES.get(device.standard);
  if (fuse !== undefined) return ofFuse(fuse, device, seconds, row);
  return notTabulated(TERM.operatingCurrent, "the device tables", `${row}; the maker's characteristic is needed`);
}

function ofFuse(rows: readonly FuseRow[], device: MarkedDevice, seconds: number, words: string): Answer {
  let best: FuseRow | undefined;
  for (const row of rows) {
    if (row.rated !== device.rated || row.seconds > seconds) continue;
    if (best === undefined || row.seconds > best.seconds) best = row;
  }
  if (best === undefined) return notTabulated(TERM.operatingCurrent, `the table of ${device.standard}`, words);
  const value = best.operating ?? LOOP_VOLTAGE / best.printedZs;
  const back = best.operating === null ? "; Ia = 218.5 V ÷ printed Zs" : "";
  if (best.seconds === seconds) return published(TERM.operatingCurrent, value, best.source, words + back);
  const from = source(best.source.work, best.source.edition, best.source.basis === "memory" ? "memory" : "derived", {
    formula: `a fuse that operates within ${best.seconds} s also operates within ${seconds} s`,
  });
  return published(TERM.operatingCurrent, value, from, words + back);
}
