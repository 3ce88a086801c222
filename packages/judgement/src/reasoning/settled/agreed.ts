import type { Compiled } from "@good-grounds/core";
import type { Differing, KnownFact } from "../results.ts";
import { allValues, type Values, valuesOfKnown } from "./known-mask.ts";

/** What is known of one fact: an answer on which everything agrees, answers that differ, or nothing that settles it. */
export interface Agreed {
  readonly answer?: { readonly known: KnownFact; readonly values: Values };
  readonly differing?: Differing;
}

/** An answer of one source about one thing; its value is null where it leaves the fact open. */
export type Answered = KnownFact | { readonly fact: string; readonly value: null };

/**
 * Several answers of one source to one fact, such as the findings of two bonds. Which thing is meant is not known, so they
 * answer only where each of them says something and all say the same.
 */
export function agreed(fact: string, answers: readonly Answered[], compiled: Compiled): Agreed {
  const variable = compiled.index.get(`fact ${fact}`);
  if (variable === undefined) return {};
  const known = answers.flatMap((one) => {
    if (!isKnownAnswer(one)) return [];
    const values = valuesOfKnown(one, compiled);
    return values === undefined ? [] : [{ known: one, values }];
  });
  const [first] = known;
  if (first === undefined) return {};
  const masks = new Set(known.map(({ values }) => values.mask));
  if (masks.size > 1) return { differing: { fact, answers: known.map((one) => one.known) } };
  if (known.length < answers.length || first.values.mask === allValues(compiled, variable)) return {};
  const of = known.flatMap((one) => one.known.of ?? []);
  const told: KnownFact = of.length === 0 ? first.known : { ...first.known, of };
  return { answer: { known: told, values: first.values } };
}

/** What two sources know of one fact together. Where no value fits both, they differ. */
export function agreedByBoth(a: Agreed, b: Agreed): Agreed {
  if (a.differing !== undefined || b.differing !== undefined) {
    const [one, other] = a.differing === undefined ? [b, a] : [a, b];
    const more = other.differing?.answers ?? (other.answer === undefined ? [] : [other.answer.known]);
    return one.differing === undefined
      ? {}
      : { differing: { ...one.differing, answers: [...one.differing.answers, ...more] } };
  }
  if (a.answer === undefined || b.answer === undefined) return a.answer === undefined ? b : a;
  const { known, values } = a.answer;
  const both = values.mask & b.answer.values.mask;
  if (both === 0) return { differing: { fact: known.fact, answers: [known, b.answer.known] } };
  return both === b.answer.values.mask && both !== values.mask ? b : both === values.mask ? a : narrowed(a, both);
}

/** Where two sources overlap, what the first says is shown, as far as both allow. */
function narrowed({ answer }: Agreed, mask: number): Agreed {
  return answer === undefined ? {} : { answer: { known: answer.known, values: { ...answer.values, mask } } };
}

function isKnownAnswer(one: Answered): one is KnownFact {
  return one.value !== null;
}
