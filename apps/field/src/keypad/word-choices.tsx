interface WordChoicesProps {
  readonly id: string;
  /** Each word with what is said for it. */
  readonly words: readonly (readonly [word: string, said: string])[];
  readonly chosen: string | undefined;
  readonly onChoose: (word: string) => void;
}

/** One of a few words, each by a touch. */
export function WordChoices({ id, words, chosen, onChoose }: WordChoicesProps) {
  return (
    <div class="choices">
      {words.map(([word, said], i) => (
        <label key={word} class="choice">
          <input
            type="radio"
            id={i === 0 ? id : `${id}=${word}`}
            name={id}
            checked={chosen === word}
            onChange={() => onChoose(word)}
          />
          <span>{said}</span>
        </label>
      ))}
    </div>
  );
}
