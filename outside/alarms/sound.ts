import { computedByHand } from "./by-hand.ts";
import { type Circuit, type House, place } from "./house/house.ts";
import { careOf, type Job, soundJob } from "./job.ts";
import { type Judged, judged, leadOf, type Told } from "./judged.ts";
import { Tally } from "./tally.ts";

/** A screen holds so many lines beside what else has to be on it. */
const SCREEN = 5;

/** What was raised on sound jobs of one level of care. */
export interface SoundCount {
  readonly level: number;
  readonly jobs: number;
  readonly circuits: number;
  readonly tally: Tally;
}

export function countSound(level: number, jobs: number, seed: string): SoundCount {
  const tally = new Tally();
  let circuits = 0;
  for (let i = 0; i < jobs; i++) {
    const job = soundJob(`${seed}/sound/${i}`, careOf(level));
    circuits += job.house.circuits.length;
    tally.next();
    count(job, judged(job.file), tally);
    for (const { check, verdict } of computedByHand(job.file)) tally.add(`by hand ${verdict} ${check}`);
  }
  return { level, jobs, circuits, tally };
}

function count({ house }: Job, { raised, told, open, outcome }: Judged, tally: Tally): void {
  const piped = new Set(house.circuits.filter((circuit) => hasPath(house, circuit)).map(({ id }) => id));
  for (const { verdict, check, at } of raised) {
    tally.add(verdict);
    tally.add(`${verdict} ${check}${piped.has(at) ? ", with pipes beside the cpc" : ""}`);
  }
  for (const one of told) {
    const how = one.clear ? "clear" : "possible";
    const harmless = truly(house, one, piped);
    tally.add(harmless === undefined ? how : `${how} ${harmless}`);
    const lead = leadOf(one);
    tally.add(`${how} ${lead}${harmless === undefined ? "" : ` (${harmless})`}`);
  }
  const tell =
    raised.filter(({ verdict }) => verdict !== "not-known").length + told.filter(({ clear }) => clear).length;
  if (tell > SCREEN) tally.add("screen full");
  if (raised.filter(({ verdict }) => verdict === "too-near").length > SCREEN) tally.add("screen full of too-near");
  for (const { kind } of open) tally.add(`open ${kind}`);
  tally.add(`outcome ${outcome}`);
}

/** Pipes that carry a part of what the protective conductor would. */
function hasPath({ parts }: House, { id }: Circuit): boolean {
  return parts.some(({ of, b }) => of === id && b === place.mainEarth);
}

/** What harmless thing leads that is really there; undefined where it is not. */
function truly(house: House, { kind, at, explanations }: Told, piped: ReadonlySet<string>): string | undefined {
  const [lead = ""] = explanations;
  if (kind === "ring") return /^spur-at-[a-z0-9-]*$/.test(lead) && !lead.includes("-and-") ? "a spur" : undefined;
  const path = /parallel|other-earth|bonding/.test(lead);
  const there = piped.has(at) || (/loop/.test(kind) && house.bonds.length > 0);
  return path && there ? "a path that is there" : undefined;
}
