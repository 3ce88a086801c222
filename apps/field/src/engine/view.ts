import type { Verdict } from "@good-grounds/core";

/** Something that is wrong or missing, with the place of the record it is at. */
export interface Trouble {
  readonly path: string;
  /** The place as people call it: "CU, circuit 4, zs". */
  readonly place: string;
  /** What is wrong or missing, as a plain sentence. */
  readonly words: string;
}

/** A whole job as screens show it. */
export interface View {
  /** What a finished report needs and this job does not have yet. */
  readonly missing: readonly Trouble[];
  /** What could not be read and was left out of the weighing. */
  readonly trouble: readonly Trouble[];
  readonly places: readonly PlaceView[];
}

/** A view as it travels: places that are as they were in the answer before are only named. */
export interface ViewChange extends Omit<View, "places"> {
  readonly order: readonly string[];
  readonly changed: readonly PlaceView[];
}

/** One place of the installation with its findings. */
export interface PlaceView {
  /** As in the record: "boards/cu/circuits/c1". */
  readonly path: string;
  readonly kind: "supply" | "bond" | "board" | "rcd" | "circuit";
  /** As people call it: "CU, circuit 4". */
  readonly name: string;
  /** The worst verdict of its findings; for a circuit those of its own RCD with them. */
  readonly worst: Verdict;
  /** The same in words, with what is only expected said. */
  readonly worstWord: string;
  readonly findings: readonly FindingView[];
}

/** One finding. */
export interface FindingView {
  readonly check: string;
  readonly title: string;
  readonly verdict: Verdict;
  /** The verdict in words, with what is only expected said. */
  readonly verdictWord: string;
  /** It is settled by what is expected, and a figure of the thing itself would prove it. */
  readonly expected: boolean;
  /** The comparison in words, or the facts that decide; empty where nothing can be said. */
  readonly words: string;
  /** The limit in words, "at most 1.37 Ω"; empty where there is none. */
  readonly limit: string;
  /** How far from the limit as a part of it; null where that has no meaning. */
  readonly margin: number | null;
  readonly marginWords: string;
  /** Reading, band and limit on one scale as SVG; empty where there is nothing to draw. */
  readonly bar: string;
  /** What would settle it, by name. */
  readonly missing: readonly string[];
  readonly remarks: readonly string[];
  /** It rests on a figure that is from memory and to be checked. */
  readonly memory: boolean;
}

/** One line of an argument. */
export interface Line {
  readonly depth: number;
  readonly tag: string;
  readonly words: string;
  readonly note: string;
}
