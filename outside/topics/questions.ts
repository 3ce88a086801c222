import { bitsOf, type Compiled, isContradicted, possibleSeverities, settledIn } from "@good-grounds/core";

/** What asking in some way comes to when every value of every fact is as likely as the next. */
export interface Questions {
  readonly mean: number;
  readonly worst: number;
}

/** Questions until the severity is settled; `ask` names the variable to ask for next. */
export function questionsNeeded(
  compiled: Compiled,
  masks: readonly number[],
  ask: (node: number, known: readonly number[]) => number | undefined,
): Questions {
  const done = new Map<string, Questions>();
  const go = (known: readonly number[]): Questions => {
    const key = known.join();
    const before = done.get(key);
    if (before !== undefined) return before;
    const node = settledIn(compiled, compiled.root, known);
    let needed: Questions = { mean: 0, worst: 0 };
    if (!isSettled(compiled, known)) {
      const variable = ask(node, known);
      if (variable === undefined) throw new Error("nothing to ask although it is not settled");
      const after = bitsOf(known[variable] as number).map((value) =>
        go(known.map((mask, i) => (i === variable ? 1 << value : mask))),
      );
      needed = {
        mean: 1 + after.reduce((sum, { mean }) => sum + mean, 0) / after.length,
        worst: 1 + Math.max(...after.map(({ worst }) => worst)),
      };
    }
    done.set(key, needed);
    return needed;
  };
  return go(masks);
}

/** The same over drawn cases, where there are too many to go through: the mean over the cases of the questions each takes. */
export function questionsOn(
  compiled: Compiled,
  masks: readonly number[],
  cases: readonly (readonly number[])[],
  ask: (node: number, known: readonly number[]) => number | undefined,
): number {
  const counts = cases.map((one) => {
    let known = [...masks];
    for (let asked = 0; ; asked++) {
      const node = settledIn(compiled, compiled.root, known);
      if (isSettled(compiled, known)) return asked;
      const variable = ask(node, known);
      if (variable === undefined) throw new Error("nothing to ask although it is not settled");
      known = known.map((mask, i) => (i === variable ? 1 << (one[i] as number) : mask));
    }
  });
  return counts.reduce((sum, count) => sum + count, 0) / counts.length;
}

/** Nothing is left to ask: one severity is possible, or what was answered cannot all be true and has to be settled first. */
function isSettled(compiled: Compiled, known: readonly number[]): boolean {
  return isContradicted(compiled, known) || bitsOf(possibleSeverities(compiled, known)).length < 2;
}
