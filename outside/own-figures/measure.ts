import type { InspectionFile } from "@good-grounds/inspection";
import { Chance } from "../../examples/simulate/chance.ts";
import { earlierOf, jobOf, shownOn } from "./jobs.ts";
import { copiedRows, HARDER, PLANTED, paced } from "./plant.ts";

/** What came of one kind of job. */
export interface Measured {
  readonly kind: string;
  readonly jobs: number;
  /** Jobs on which a check meant for it showed something; of clean jobs, those on which any did. */
  readonly shown: number;
  /** Jobs by the check that came first. */
  readonly first: ReadonlyMap<string, number>;
}

type Maker = (n: number) => { readonly file: InspectionFile; readonly earlier?: InspectionFile } | undefined;

/** Checks that tell each kind of plant; only they count as finding it. */
const MEANT: Readonly<Record<string, readonly string[]>> = {
  "Zs added up": ["zs-sum"],
  "R1+R2 worked back": ["zs-sum", "r1r2-difference"],
  "rows swapped": ["swapped-rows"],
  "R1+R2 of two rows swapped": ["swapped-rows"],
  "decimal slipped": ["slipped-decimal"],
  "any two rows swapped": ["swapped-rows"],
  "decimal slipped in R1+R2 or Zs": ["slipped-decimal"],
  "schedule shifted": ["shifted-rows"],
  "R1+R2 column shifted": ["shifted-rows"],
  "schedule copied from an earlier file": ["copied-schedule"],
  "half of the rows copied from an earlier file": ["copied-schedule"],
};

function measured(kind: string, count: number, make: Maker): Measured {
  const first = new Map<string, number>();
  let jobs = 0;
  let shown = 0;
  for (let n = 0; n < count; n++) {
    const made = make(n);
    if (made === undefined) continue;
    jobs += 1;
    const checks = shownOn(made.file, made.earlier);
    const meant = MEANT[kind];
    if (meant === undefined ? checks.length > 0 : checks.some((check) => meant.includes(check))) shown += 1;
    const [top] = checks;
    if (top !== undefined) first.set(top, (first.get(top) ?? 0) + 1);
  }
  return { kind, jobs, shown, first };
}

/** Clean jobs, alone and against an honest earlier inspection of the same installation. */
export function measureClean(count: number): readonly Measured[] {
  return [
    measured("clean", count, (n) => ({ file: jobOf(n) })),
    measured("clean, against an honest earlier file", Math.floor(count / 4), (n) => ({
      file: jobOf(n),
      earlier: earlierOf(n),
    })),
  ];
}

type Plant = (file: InspectionFile, chance: Chance) => InspectionFile | undefined;

const plantedIn = (kinds: Readonly<Record<string, Plant>>, count: number) =>
  Object.entries(kinds).map(([kind, plant]) =>
    measured(kind, count, (n) => {
      const file = plant(jobOf(n), new Chance(n + 5));
      return file === undefined ? undefined : { file };
    }),
  );

/** Kinds for which nothing is asked, and clean jobs with poor lengths. */
export function measureHarder(count: number): readonly Measured[] {
  return [
    measured("clean, lengths paced to 15 %", count, (n) => ({ file: paced(jobOf(n), new Chance(n + 9)) })),
    ...plantedIn(HARDER, count),
  ];
}

/** Jobs with one thing planted in each. */
export function measurePlanted(count: number): readonly Measured[] {
  return [
    ...plantedIn(PLANTED, count),
    measured("schedule copied from an earlier file", count, (n) => ({
      file: copiedRows(jobOf(n), earlierOf(n), 1),
      earlier: earlierOf(n),
    })),
    measured("half of the rows copied from an earlier file", count, (n) => ({
      file: copiedRows(jobOf(n), earlierOf(n), 0.5),
      earlier: earlierOf(n),
    })),
  ];
}
