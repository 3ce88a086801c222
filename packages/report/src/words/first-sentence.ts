/** The first sentence of a paragraph; the whole where it is one. */
export function firstSentence(paragraph: string): string {
  const [sentence = paragraph] = /^.+?[.!?](?=\s+\p{Lu}|\s*$)/su.exec(paragraph) ?? [];
  return sentence.trim();
}
