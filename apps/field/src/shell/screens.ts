import type { ComponentType } from "preact";

/** A screen of an open job. */
export interface Screen {
  /** The step of the address after the job: "installation". */
  readonly id: string;
  readonly title: string;
  /** The part of the visit under which it is listed. */
  readonly part: "before" | "walk" | "test" | "judge" | "finish";
  readonly load: () => Promise<{ readonly default: ComponentType<ScreenProps> }>;
}

export interface ScreenProps {
  /** Steps of the address below the screen: the circuit or observation that is open. */
  readonly rest: readonly string[];
}

/** Screens in the order of the visit. Each file owns one; adding one adds a line here. */
export const SCREENS: readonly Screen[] = [];
