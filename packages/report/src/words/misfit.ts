import { type Explanation, type Misfit, type MisfitReading, printQuantity } from "@good-grounds/core";
import { MISFITS } from "../locales/misfits-en.ts";

/** Explanations beside the leading one that are worth a line. */
const MOST = 4;

/** An explanation is told from the leading one where that is this many times as likely. */
const TOLD_APART = 3;

/** A misfit in sentences: what was read, what explains it, what to read next. */
export interface MisfitWords {
  readonly readings: readonly string[];
  readonly explanations: readonly string[];
  /** How many explanations, from the first on, cannot be told apart. */
  readonly tied: number;
  readonly next: readonly string[];
  readonly innocent: string;
  readonly rule: string;
  readonly assumed: readonly string[];
}

/** What a misfit is called, with its certainty where that is not clear. */
export function misfitTitle({ title, clear }: Misfit): string {
  return clear ? title : `${title} (${MISFITS.lessClear})`;
}

/** Every sentence of a misfit, for terminal and page alike. */
export function misfitWords(misfit: Misfit): MisfitWords {
  const { readings, explanations, next, innocentCauses, formula, grounds, toldApart } = misfit;
  const [leading] = explanations;
  const shown = explanations.slice(0, MOST);
  const isTied = ({ share }: Explanation) => !toldApart && share * TOLD_APART > (leading?.share ?? 0);
  const tied = Math.min(shown.length, misfit.tied ?? Math.max(1, shown.filter(isTied).length));
  return {
    tied,
    readings: readings.map(
      ({ name, shown, low, high, unit }) =>
        `${name} ${shown}: ${MISFITS.expected(printQuantity(low, unit), printQuantity(high, unit))}`,
    ),
    explanations: shown.map((one, i) => {
      const said = [one.words, ...wouldWords(one, readings), ...(one.innocent ? [MISFITS.noFault] : [])].join("; ");
      const share = MISFITS.share(one.share);
      if (i === 0) return MISFITS.leading(said, share);
      return i < tied ? MISFITS.tied(said, share) : MISFITS.other(said, share);
    }),
    next: next === null ? [] : [MISFITS.next(nextWords(misfit))],
    innocent: MISFITS.innocent(innocentCauses),
    rule: MISFITS.rule(formula),
    assumed: [
      ...new Set(grounds.flatMap((leaf) => (leaf.kind === "assumed" ? [MISFITS.assumed(leaf.detail.why)] : []))),
    ],
  };
}

/** What each reading would be under an explanation, where that is not what is written. */
function wouldWords({ would }: Explanation, readings: readonly MisfitReading[]): readonly string[] {
  const said = readings.flatMap(({ name, unit, path, measured, low, high }) => {
    const one = would.find((expected) => expected.path.join("/") === path.join("/"));
    // A reading that was as expected anyway says nothing here.
    if (one === undefined || (measured >= low && measured <= high)) return [];
    return [MISFITS.would(name, printQuantity(one.value, unit))];
  });
  return said.length === 0 ? [] : [MISFITS.wouldRead(said.slice(0, MOST))];
}

function nextWords({ next }: Misfit): string {
  const expects = (next?.expects ?? []).map(({ explanation, words }) =>
    MISFITS.expects(words, MISFITS.short(explanation)),
  );
  return [next?.words ?? "", ...expects].filter((part) => part !== "").join("; ");
}
