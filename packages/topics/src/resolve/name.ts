/** Words that conditions are made of, so that no name can be told from them. */
const OF_THE_LANGUAGE = new Set(["and", "or", "not", "is", "always", "worse", "better", "at", "more", "less"]);

/** What is wrong with a name of a topic, a fact, an amount, a contested point or a state; it has to stand in a file. */
export function nameFault(
  name: string,
): { readonly found: string; readonly expected: string; readonly advice: string } | undefined {
  if (OF_THE_LANGUAGE.has(name))
    return {
      found: `"${name}" as a name`,
      expected: "a name that is no word of the language",
      advice: "name it by what it is: conditions could not speak of it",
    };
  if (!/^[a-z][a-z0-9-]{1,39}$/.test(name))
    return {
      found: `"${name}" as a name`,
      expected: "2 to 40 small letters, digits and hyphens, a letter first",
      advice: "name it by what it is, in two or three words joined by hyphens",
    };
  return undefined;
}

/** Whether a value, or a position where those are meant, would be read as a word of the condition it stands in. */
export function isWordOfConditions(value: string, isPosition: boolean): boolean {
  return /^(?:and|or|not|is)$/.test(value) || (!isPosition && /^(?:worse|better)$/.test(value));
}
