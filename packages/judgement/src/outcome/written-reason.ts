/** Words that only point elsewhere, or join such words: with nothing else beside them they give no reason. */
const POINTERS: ReadonlySet<string> = new Set(
  `a above already an and any are as at attached before below by comment comments described details ditto earlier elsewhere
  for here in is item items its mentioned next no note noted notes number observation observations obs of on other page
  photo photograph photographs photos please point previous previously ref refer reference remark remarks report same
  schedule see sheet stated such text that the there these this to under was were with`.split(/\s+/),
);

/** Words that stand where a reason should and give none, alone or one after the other. */
const NO_REASON: ReadonlySet<string> = new Set(
  `applicable done fine later n na nil none noreason not ok okay pass reason satisfactory tba tbc tbd unknown yes`.split(
    /\s+/,
  ),
);

/** Letters a reason has at least; fewer are a sign to fill the place. */
const FEWEST = 4;

/** What a reason of its own has at least: one that has to convince a reader who was not there. */
const OF_ITS_OWN = { words: 2, letters: 10 };

/** The words of a text that say something: no pointers, no fillers, no letters struck over and over. */
function saying(text: string | undefined): readonly string[] {
  const words = (text ?? "").toLowerCase().match(/\p{L}[\p{L}'’-]*/gu) ?? [];
  return words.filter(
    (word) => !POINTERS.has(word) && !NO_REASON.has(word) && new Set(word).size > Math.min(1, word.length - 1),
  );
}

const letters = (words: readonly string[]) => words.join("").length;

/**
 * Whether somebody wrote why: a dash, a dot, "n/a", "ok" or "see above" fills the place of a reason and is none. Words
 * that point elsewhere do no harm beside words that say something.
 */
export function isWrittenReason(text: string | undefined): text is string {
  return letters(saying(text)) >= FEWEST;
}

/**
 * Whether a reason stands by itself: enough words that say something to be weighed by a reader who was not there. Asked
 * where the reason is all that stands between a finding and the outcome.
 */
export function isReasonOfItsOwn(text: string | undefined): text is string {
  const words = saying(text);
  return words.length >= OF_ITS_OWN.words && letters(words) >= OF_ITS_OWN.letters;
}
