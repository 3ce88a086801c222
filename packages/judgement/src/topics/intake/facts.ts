import { type ChoiceFact, type Danger, is, ranked, type Statement, says } from "@good-grounds/core";

/** Questions and dangers that several topics about the intake share, so that one state reads the same everywhere. */

/** Heat at a part of the intake: none, its marks, or heat now. `formerly`: the answers of files that asked for marks only. */
export function heatAtIntake(about: {
  readonly asks: string;
  readonly effort: ChoiceFact["effort"];
  readonly none: string;
  readonly marks: string;
}): ChoiceFact {
  return ranked({
    asks: `${about.asks} Does anything smoke or crackle, or is it too hot to touch now?`,
    effort: about.effort,
    values: {
      none: about.none,
      marks: about.marks,
      now: "a part smokes, crackles, smells of burning or is too hot to touch now",
    },
    formerly: { no: "none", yes: "marks" },
  });
}

export const HOT_NOW: Danger = Object.freeze({
  id: "hot-now",
  least: "C1",
  when: is("heat", "now"),
  words:
    "a part of the intake smokes, crackles or is too hot to touch now, and nothing but the main fuse is ahead of it",
  regulations: ["526.1", "134.1.1"],
});

/** What the client is told of it, before everything else: to get away, not to go near to switch off. */
export const HOT_NOW_TOLD: Statement = says(
  "A main power part here smokes, crackles, smells of burning or is too hot to touch. A fire could start. Keep away, get out and call for help now.",
  HOT_NOW.when,
);
