/** Syllables of an English word, by groups of vowels: good enough for a readability formula, which is rough itself. */
function syllablesOf(word: string): number {
  const plain = word
    .toLowerCase()
    .replaceAll(/[^a-z]/g, "")
    .replace(/(?:[^laeiouy]es|[^laeiouy]ed|[^aeiouyl]e)$/, "");
  return Math.max(1, plain.match(/[aeiouy]+/g)?.length ?? 1);
}

/**
 * Flesch-Kincaid grade of a text: 0.39·words per sentence + 11.8·syllables per word − 15.59. Grade 6 is read at eleven.
 * Source: Kincaid et al., 1975, derivation of new readability formulas for Navy enlisted personnel.
 */
export function gradeOf(text: string): number {
  const sentences = text.split(/[.!?:]+/).filter((part) => part.trim() !== "");
  const words = text.split(/\s+/).filter((word) => /[a-z0-9]/i.test(word));
  const syllables = words.reduce((sum, word) => sum + syllablesOf(word), 0);
  return (0.39 * words.length) / sentences.length + (11.8 * syllables) / words.length - 15.59;
}
