import type { TraitWeight } from "@good-grounds/core";
import type { Board, Installation } from "@good-grounds/inspection";
import { assign, type Edge } from "./assignment.ts";
import { matchBoards } from "./boards.ts";
import { type Traits, traitsOf } from "./traits.ts";
import { total, traitWeights } from "./weight.ts";
import { Vocabulary } from "./words.ts";

/** What it speaks for or against two circuits that their boards are held to be one. */
const BOARD: readonly [against: number, favour: number] = [-1.5, 1];

/**
 * The odds of every two circuits of two files being the same. Boards are matched first by the circuits they share, and
 * the match of the boards then speaks for or against that of their circuits.
 */
export class Odds {
  readonly before: readonly Traits[];
  readonly after: readonly Traits[];
  readonly vocabulary: Vocabulary;
  readonly boards: ReadonlyMap<Board, Board> = new Map();
  readonly #boardsBack: ReadonlyMap<Board, Board> = new Map();
  readonly #weights: readonly (readonly (readonly TraitWeight[])[])[];
  /** Boards play a part only where there are several, and once they are matched. */
  readonly #several: boolean = false;
  /** Any two of so many circuits are the same one only so often; how often is part of the odds. */
  readonly #prior: number;

  constructor(past: Installation, now: Installation) {
    this.before = past.circuits.map(traitsOf);
    this.after = now.circuits.map(traitsOf);
    this.vocabulary = new Vocabulary([...this.before, ...this.after].map(({ words }) => words));
    this.#weights = this.before.map((a) => this.after.map((b) => traitWeights(a, b, this.vocabulary)));
    this.#prior = Math.log(Math.max(1, this.before.length, this.after.length));
    const [a, b, ...more] = [...past.boards, ...now.boards];
    if (a !== undefined && b !== undefined && more.length === 0 && past.boards.length === 1) {
      this.boards = new Map([[a, b]]);
      return;
    }
    const { columnOf } = assign(this.before.length, this.after.length, this.edges());
    const shared = columnOf.flatMap((j, i) => {
      const [one, other] = [this.before[i], this.after[j]];
      return one === undefined || other === undefined ? [] : [[one.circuit, other.circuit] as const];
    });
    this.boards = matchBoards(past, now, shared);
    this.#boardsBack = new Map([...this.boards].map(([one, other]) => [other, one]));
    this.#several = true;
  }

  /** What speaks for and against the two at these positions. */
  because(i: number, j: number): readonly TraitWeight[] {
    const list = this.#weights[i]?.[j] ?? [];
    const board = this.#boardWeight(i, j);
    return board === 0 ? list : [...list, { trait: "board", weight: board }];
  }

  /** ln of the odds of the two at these positions being the same. */
  weight(i: number, j: number): number {
    return total(this.#weights[i]?.[j] ?? []) + this.#boardWeight(i, j) - this.#prior;
  }

  edges(): readonly Edge[] {
    return this.before.flatMap((_, row) =>
      this.after.map((_, column) => ({ row, column, weight: this.weight(row, column) })),
    );
  }

  #boardWeight(i: number, j: number): number {
    const [a, b] = [this.before[i]?.circuit.board, this.after[j]?.circuit.board];
    if (!this.#several || a === undefined || b === undefined) return 0;
    const partner = this.boards.get(a);
    if (partner === undefined && !this.#boardsBack.has(b)) return 0;
    return BOARD[partner === b ? 1 : 0];
  }
}
