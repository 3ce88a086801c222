import type { Unit } from "../quantity/unit.ts";
import type { Term } from "../terms/term.ts";
import type { Computed, Ground, Lacking, Operation } from "./evidence.ts";

export const NONE: readonly Ground[] = Object.freeze([]);

/** The lines of an argument as they are made. With `keep` false they are dropped and nothing is frozen. */
export class Lines {
  protected readonly keep: boolean;

  constructor(keep: boolean) {
    this.keep = keep;
  }

  protected pair(a: Ground, b: Ground): readonly Ground[] {
    return this.keep ? [a, b] : NONE;
  }

  protected line<U extends Unit>(
    term: Term<U>,
    detail: Operation,
    value: number,
    low: number,
    high: number,
    from: readonly Ground[],
  ): Computed<U> | Lacking<U> {
    // One limitless thing less another has no value: then nothing is known on that side.
    const known = !Number.isNaN(value);
    const node = {
      kind: known ? "computed" : "lacking",
      term,
      value,
      low: known ? (Number.isNaN(low) ? Number.NEGATIVE_INFINITY : low) : value,
      high: known ? (Number.isNaN(high) ? Number.POSITIVE_INFINITY : high) : value,
      detail,
      from,
    } as Computed<U> | Lacking<U>;
    return this.seal(node);
  }

  protected seal<T extends { readonly from: readonly Ground[] }>(node: T): T {
    if (!this.keep) return node;
    Object.freeze(node.from);
    return Object.freeze(node);
  }
}
