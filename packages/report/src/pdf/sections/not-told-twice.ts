/** Words that carry no meaning of their own in a list of what was left out. */
const EMPTY: ReadonlySet<string> = new Set(
  "a an and any as at be been by for from in is it no not of on or other the them to was were with".split(" "),
);

/**
 * The clauses of a summary that none of the longer statements tells as well: a clause is left out only where a single
 * statement has every word of it that means something, so that nothing goes untold.
 */
export function notToldTwice(summary: string, statements: readonly string[]): readonly string[] {
  const told = statements.map((statement) => new Set(meaningful(statement)));
  return summary
    .split(/;\s+|(?<=[.!?])\s+(?=\p{Lu})|\n+/u)
    .map((clause) => clause.trim())
    .filter((clause) => {
      const words = meaningful(clause);
      return clause !== "" && (words.length === 0 || !told.some((have) => words.every((word) => have.has(word))));
    });
}

/** The words of a text that carry its meaning, without the endings of the plural. */
function meaningful(text: string): readonly string[] {
  return [...text.toLowerCase().matchAll(/[\p{L}\p{N}]+/gu)]
    .map(([word]) => word)
    .filter((word) => !EMPTY.has(word))
    .map((word) => (word.length > 3 ? word.replace(/s$/u, "") : word));
}
