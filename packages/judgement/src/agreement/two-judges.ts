import type { AgreementFigures, Classification } from "@good-grounds/core";
import { cohenKappa } from "./cohen-kappa.ts";
import { byText } from "./order.ts";
import { tally } from "./tally.ts";

/** Fewer sets of facts in common than this give no figure worth showing for two judges. */
export const LEAST_COMMON = 10;

/** Judges that are paired at most; with this many there are 1770 pairs. */
const MOST_PAIRED = 60;

type Usual = ReadonlyMap<string, Classification>;

/** Cohen's kappa for every two judges who have enough sets of facts in common, those with most in common first. */
export function twoJudges(sets: readonly Usual[]): Pick<AgreementFigures, "two" | "notPaired"> {
  const times = tally(
    sets.flatMap((set) => (set.size > 1 ? [...set.keys()] : [])),
    (judge) => judge,
  );
  const enough = [...times]
    .filter(([, count]) => count >= LEAST_COMMON)
    .sort(([a, m], [b, n]) => n - m || byText(a, b))
    .map(([judge]) => judge);
  const paired = enough.slice(0, MOST_PAIRED).sort(byText);
  const two = paired.flatMap((first, i) => paired.slice(i + 1).flatMap((second) => figuresOf(first, second, sets)));
  two.sort((a, b) => b.common - a.common);
  return { two, notPaired: enough.length - paired.length };
}

function figuresOf(first: string, second: string, sets: readonly Usual[]): AgreementFigures["two"] {
  const choices = sets.flatMap((set) => {
    const one = set.get(first);
    const other = set.get(second);
    return one === undefined || other === undefined ? [] : [[one, other] as const];
  });
  if (choices.length < LEAST_COMMON) return [];
  return [
    {
      judges: [first, second],
      common: choices.length,
      kappa: cohenKappa(choices),
      linear: cohenKappa(choices, "linear"),
      quadratic: cohenKappa(choices, "quadratic"),
    },
  ];
}
