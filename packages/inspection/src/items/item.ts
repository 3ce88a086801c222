/** One thing an inspection has to look at and answer. */
export interface InspectionItem {
  /** Stable id: group and name, "intake.cut-out". */
  readonly id: string;
  /** What is asked, in the words of this project. */
  readonly asks: string;
  /** Regulations of BS 7671 it bears on. */
  readonly regulations: readonly string[];
}

export function item<const I extends string>(id: I, asks: string, ...regulations: readonly string[]) {
  return Object.freeze({ id, asks, regulations }) as {
    readonly id: I;
    readonly asks: string;
    readonly regulations: readonly string[];
  };
}
