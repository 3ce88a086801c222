import type { Fact, Judgement, Matter, Reckoner, Verdict } from "@good-grounds/core";

/** Met where a fact is as it should be, not met where it is not, open where it is not known. */
export function wants(reckon: Reckoner, about: Matter, subject: Fact<boolean>, wanted = true, why = ""): Judgement {
  return reckon.byWord(about, subject, (word) => (word === wanted ? "met" : "not-met"), why);
}

/** Met where a word is one of those wanted. */
export function wantsOneOf<W extends string>(
  reckon: Reckoner,
  about: Matter,
  subject: Fact<W>,
  wanted: readonly W[],
  why = "",
): Judgement {
  return reckon.byWord(about, subject, (word): Verdict => (wanted.includes(word) ? "met" : "not-met"), why);
}
