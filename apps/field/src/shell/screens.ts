import type { ComponentType } from "preact";
import type { Record as JobRecord } from "../record/record.ts";
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
  { id: "brief", title: "Brief", part: "before", load: () => import("../screens/brief/brief.tsx") },
];
