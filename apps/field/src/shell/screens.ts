import type { ComponentType } from "preact";
import type { Record as JobRecord } from "../record/record.ts";
import { briefHowFar } from "../screens/brief/how-far.ts";
import { cautionsHowFar } from "../screens/cautions/how-far.ts";
import { dangerHowFar } from "../screens/danger/how-far.ts";
import { extentHowFar } from "../screens/extent/how-far.ts";
import { finishHowFar } from "../screens/finish/how-far.ts";
import { inspectedHowFar } from "../screens/inspected/how-far.ts";
import { installationHowFar } from "../screens/installation/how-far.ts";
import { observationsHowFar } from "../screens/observations/how-far.ts";
import { peopleHowFar } from "../screens/people/how-far.ts";
import { readingsHowFar } from "../screens/readings/how-far.ts";
import { supplyHowFar } from "../screens/supply/how-far.ts";
import type { PART } from "../words/shell.ts";

/** A screen of an open job. */
export interface Screen {
  /** The step of the address after the job: "installation". */
  readonly id: string;
  readonly title: string;
  /** The part of the visit under which it is listed. */
  readonly part: keyof typeof PART;
  /** How far it is, in a few words, from what stands in the job; undefined where nothing is worth saying. */
  readonly howFar?: (record: JobRecord) => HowFar | undefined;
  /** Goes along with the whole visit, so that nobody is sent there to go on. */
  readonly alongside?: true;
  readonly load: () => Promise<{ readonly default: ComponentType<ScreenProps> }>;
}

export interface HowFar {
  readonly words: string;
  readonly done: boolean;
}

export interface ScreenProps {
  /** Steps of the address below the screen: the circuit or observation that is open. */
  readonly rest: readonly string[];
}

/** Screens in the order of the visit. Each file owns one; adding one adds a line here. */
export const SCREENS: readonly Screen[] = [
  {
    id: "brief",
    title: "Brief",
    part: "before",
    howFar: briefHowFar,
    load: () => import("../screens/brief/brief.tsx"),
  },
  {
    id: "people",
    title: "People and instruments",
    part: "before",
    howFar: peopleHowFar,
    load: () => import("../screens/people/people.tsx"),
  },
  {
    id: "extent",
    title: "Extent and limitations",
    part: "before",
    howFar: extentHowFar,
    load: () => import("../screens/extent/extent.tsx"),
  },
  {
    id: "cautions",
    title: "Cautions and steps",
    part: "walk",
    howFar: cautionsHowFar,
    alongside: true,
    load: () => import("../screens/cautions/cautions.tsx"),
  },
  {
    id: "supply",
    title: "Supply",
    part: "walk",
    howFar: supplyHowFar,
    load: () => import("../screens/supply/supply.tsx"),
  },
  {
    id: "installation",
    title: "Installation",
    part: "walk",
    howFar: installationHowFar,
    load: () => import("../screens/installation/installation.tsx"),
  },
  { id: "things", title: "Things one by one", part: "walk", load: () => import("../screens/things/things.tsx") },
  {
    id: "inspected",
    title: "Inspected items",
    part: "walk",
    howFar: inspectedHowFar,
    load: () => import("../screens/inspected/inspected.tsx"),
  },
  {
    id: "readings",
    title: "Readings",
    part: "test",
    howFar: readingsHowFar,
    load: () => import("../screens/readings/readings.tsx"),
  },
  {
    id: "instrument-file",
    title: "Readings from a file",
    part: "test",
    load: () => import("../screens/instrument-file/instrument-file.tsx"),
  },
  {
    id: "observations",
    title: "Observations",
    part: "judge",
    howFar: observationsHowFar,
    load: () => import("../screens/observations/observations.tsx"),
  },
  {
    id: "danger",
    title: "Danger found",
    part: "judge",
    howFar: dangerHowFar,
    load: () => import("../screens/danger/danger.tsx"),
  },
  { id: "pictures", title: "Pictures", part: "judge", load: () => import("../screens/pictures/pictures.tsx") },
  {
    id: "finish",
    title: "Finish and sign",
    part: "finish",
    howFar: finishHowFar,
    load: () => import("../screens/finish/finish.tsx"),
  },
  {
    id: "hand-over",
    title: "Hand over and join",
    part: "finish",
    load: () => import("../screens/hand-over/hand-over.tsx"),
  },
];
