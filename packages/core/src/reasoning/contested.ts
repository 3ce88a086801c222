import type { Knowledge } from "./answers.ts";
import type { Compiled } from "./compile.ts";
import { possibleSeverities } from "./possible.ts";
import { bitsOf } from "./survey.ts";

/** A contested point that matters for what is known, with what each position leaves possible. */
export interface ContestedView {
  readonly point: string;
  readonly question: string;
  readonly positions: readonly {
    readonly position: string;
    readonly words: string;
    readonly because: string;
    readonly taken: boolean;
    /** Bit set of severities. */
    readonly possible: number;
  }[];
}

/** The contested points that change what is possible, each with the others as they are taken. */
export function contestedViews(compiled: Compiled, { masks }: Knowledge): readonly ContestedView[] {
  return compiled.variables.flatMap(({ kind, name, cells }, variable) => {
    if (kind !== "point") return [];
    const about = compiled.subject.contested[name];
    if (about === undefined) return [];
    const positions = cells.values.map((position, number) => {
      const { words, because } = about.positions[position] as { words: string; because: string };
      const taken = bitsOf(masks[variable] as number).includes(number);
      return {
        position,
        words,
        because,
        taken,
        possible: possibleSeverities(compiled, masks.with(variable, 1 << number)),
      };
    });
    const [first] = positions;
    return positions.every(({ possible }) => possible === first?.possible)
      ? []
      : [{ point: name, question: about.question, positions }];
  });
}
