import { Draws } from "./draws.ts";
import type { Fault, Planted } from "./faults/fault.ts";
import { drawHouse } from "./house/draw-house.ts";
import type { House } from "./house/house.ts";
import { type Judged, judged } from "./judged.ts";
import { CARE, type Care } from "./site/care.ts";
import { Site } from "./site/site.ts";
import { type Written, written } from "./site/write.ts";

/** A sound installation, a day on site, and the file that came of it. */
export interface Job {
  readonly house: House;
  readonly file: Written;
}

export function careOf(level: number): Care {
  const found = CARE[level - 1];
  if (found === undefined) throw new Error(`levels of care are 1 to ${CARE.length}, not ${level}`);
  return found;
}

export function soundJob(seed: string, care: Care): Job {
  const draws = new Draws(seed);
  const house = drawHouse(draws);
  return { house, file: written(new Site(house, care, draws.of("site"))) };
}

/** A job with one fault, beside the same job without it. */
export interface FaultyJob {
  readonly planted: Planted;
  readonly file: Written;
  /** Whether the two files differ at all: a fault that no reading depends on cannot be found. */
  readonly traced: boolean;
  readonly with: Judged;
  readonly without: Judged;
}

/** The first house by this seed that has a place for the fault. */
export function faultyJob(fault: Fault, seed: string, care: Care): FaultyJob | null {
  for (let attempt = 0; attempt < 60; attempt++) {
    const draws = new Draws(`${seed}/${attempt}`);
    const house = drawHouse(draws);
    const planted = fault.plant(house, draws.of(`fault/${fault.id}`));
    if (planted === null) continue;
    const site = draws.of("site");
    const sound = written(new Site(house, care, site));
    const file = written(new Site(planted.house ?? house, care, site, planted.notNulled));
    planted.slip?.(file);
    const traced = JSON.stringify(file) !== JSON.stringify(sound);
    return { planted, file, traced, with: judged(file), without: judged(sound) };
  }
  return null;
}

/** What a faulty job shows that the same job without the fault does not. */
export function newIn(job: FaultyJob) {
  const known = new Set([...job.without.raised, ...job.without.told, ...job.without.open].map(({ key }) => key));
  const at = new Set(job.planted.at);
  const raised = job.with.raised.filter(
    ({ key, at: where, verdict }) => verdict === "not-met" && !known.has(key) && at.has(where),
  );
  const told = job.with.told.filter(({ key, at: where }) => !known.has(key) && at.has(where));
  const open = job.with.open.filter(
    ({ key, at: where }) => !known.has(key) && (where.length === 0 || where.some((one) => at.has(one))),
  );
  return { raised, told, open };
}
