import { slipsBetween } from "../text/slips.ts";

/** Letters of a word as bits: two words that differ in many letters cannot be spellings of each other. */
function lettersOf(word: string): number {
  let bits = 0;
  for (const letter of word) bits |= 1 << (letter.charCodeAt(0) & 31);
  return bits;
}

/** A list of words in which misspelt ones are looked up. */
export class Spelling {
  readonly #letters: readonly (readonly [word: string, letters: number, uses: number])[];

  /** Words with how often each is used. */
  constructor(words: ReadonlyMap<string, number>) {
    this.#letters = [...words]
      .filter(([word]) => word.length > 3 && !/\d/.test(word))
      .map(([word, uses]) => [word, lettersOf(word), uses]);
  }

  /** The word that was meant: the fewest slips away, beginning alike, used most; undefined where none is near. */
  nearest(typed: string): string | undefined {
    if (typed.length < 4 || /\d/.test(typed)) return undefined;
    const most = typed.length < 8 ? 1 : 2;
    const letters = lettersOf(typed);
    let best: readonly [word: string, badness: number, uses: number] | undefined;
    for (const [word, others, uses] of this.#letters) {
      if (Math.abs(word.length - typed.length) > most || bitsOf(letters ^ others) > 2 * most) continue;
      const slips = slipsBetween(typed, word);
      if (slips > most || (slips > 1 && word[0] !== typed[0])) continue;
      const badness = slips + (word[0] === typed[0] ? 0 : 0.5);
      if (best === undefined || badness < best[1] || (badness === best[1] && uses > best[2]))
        best = [word, badness, uses];
    }
    return best?.[0];
  }
}

function bitsOf(bits: number): number {
  let count = 0;
  for (let left = bits; left !== 0; left &= left - 1) count += 1;
  return count;
}
