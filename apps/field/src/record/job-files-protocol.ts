import type { JobLog } from "./job-log.ts";

/** What the worker with the files of jobs is asked. */
export type Asked =
  | { readonly ask: "names" }
  | { readonly ask: "read"; readonly job: string }
  | { readonly ask: "add"; readonly job: string; readonly bytes: Uint8Array; readonly leastSize: number }
  | { readonly ask: "remove"; readonly job: string }
  /** What the device keeps besides jobs: one whole text by its name, each writing in place of the one before. */
  | { readonly ask: "kept"; readonly name: string }
  | { readonly ask: "keep"; readonly name: string; readonly bytes: Uint8Array };

/** The size after bytes were added; where the file was shorter than it must be, nothing was and it says so. */
export interface Added {
  readonly size: number;
  readonly short: boolean;
}

export interface Answers {
  readonly names: readonly string[];
  readonly read: JobLog;
  readonly add: Added;
  readonly remove: null;
  /** Nothing where there is none, or where it was damaged. */
  readonly kept: string | null;
  readonly keep: null;
}

export type Told = { readonly number: number } & (
  | { readonly answer: Answers[keyof Answers] }
  /** The browser has no such files for this page. */
  | { readonly absent: string }
  | { readonly trouble: string }
);
