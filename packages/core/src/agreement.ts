import type { Classification } from "./vocabulary/premises.ts";

/** Why a coefficient has no value: nothing was judged, or only one classification occurs, so that chance alone agrees. */
export type NotDefined = "no-items" | "one-category-only";

/** Cohen's kappa of two judges, or why it has none. */
export type CohenKappa =
  | {
      readonly defined: true;
      readonly value: number;
      /** Part of the items on which the two agree; with weights, steps apart count in part. */
      readonly observed: number;
      /** The same part if each judge had chosen at random, each classification as often as they did. */
      readonly expected: number;
      readonly standardError: number;
      /** Ends of the 95 % interval, kept within −1 and 1. */
      readonly low: number;
      readonly high: number;
      readonly items: number;
    }
  | { readonly defined: false; readonly because: NotDefined; readonly items: number };

/** Fleiss' kappa of several judges, or why it has none. */
export type FleissKappa =
  | {
      readonly defined: true;
      readonly value: number;
      readonly observed: number;
      readonly expected: number;
      readonly items: number;
      /** Items with one rating, on which nobody can agree or differ; they count in what is expected only. */
      readonly ratedOnce: number;
      /** By classification against all others; null where it was never chosen. */
      readonly byClassification: Readonly<Record<Classification, number | null>>;
    }
  | { readonly defined: false; readonly because: NotDefined; readonly items: number; readonly ratedOnce: number };

/** One classification somebody chose, and where it stands. */
export interface ChoiceMade {
  readonly classification: Classification;
  readonly reason: string;
  /** The person's name as the file spells it. */
  readonly by: string;
  /** The name as persons are matched: letter case and spacing evened. */
  readonly person: string;
  /** Id of the inspection. */
  readonly file: string;
  /** The file, or the line of a stream, it was read from. */
  readonly source: string;
  readonly observation: string;
  /** Day of the inspection. */
  readonly date: string;
  readonly edition: string;
}

/** A fact as it is shown: yes or no, text, or a statement that it is not known or does not apply. */
export interface FactShown {
  readonly name: string;
  readonly value: boolean | string | { readonly notKnown: true } | { readonly notApplicable: true };
}

export interface PositionShown {
  readonly point: string;
  readonly position: string;
}

/** What was judged: a topic with its facts and the positions taken. */
export interface FactSet {
  readonly topic: string;
  readonly facts: readonly FactShown[];
  readonly positions: readonly PositionShown[];
}

/** A set of facts and everything that was chosen on it, by classification and then oldest first. */
export interface ChoiceSet extends FactSet {
  readonly choices: readonly ChoiceMade[];
}

/** Sets of facts alike in all but one fact or position, with classifications that are not all the same. */
export interface NearDifference {
  /** The fact or point that differs. */
  readonly differs: { readonly kind: "fact" | "position"; readonly name: string };
  readonly members: readonly {
    /** Position in the list of sets. */
    readonly set: number;
    /** Null where it was not recorded. */
    readonly value: FactShown["value"] | null;
  }[];
}

/** Whose choices are held against each other: those of persons or those of files. */
export const CHOSEN_BY = Object.freeze(["person", "file"] as const);
export type ChosenBy = (typeof CHOSEN_BY)[number];

/** Pairs of choices on the same facts, and how many of them are alike. */
export interface PairCount {
  readonly pairs: number;
  readonly agreed: number;
}

export interface AgreementFigures {
  readonly by: ChosenBy;
  readonly all: PairCount;
  /** Pairs made by one and the same person or file. */
  readonly within: PairCount;
  /** Pairs made by two different ones. */
  readonly between: PairCount;
  /** Fleiss' kappa over the sets of facts that two or more judged; `judges` took part in it. */
  readonly several: { readonly judges: number; readonly kappa: FleissKappa };
  /**
   * In kappa a judge counts once on a set of facts, with the usual choice. How often it was not the only one (`varied`),
   * and how often two were chosen equally often, so that there is none and the judge is left out of that set (`tied`).
   */
  readonly varied: number;
  readonly tied: number;
  /** Cohen's kappa for two with enough sets of facts in common, those with most first. */
  readonly two: readonly {
    readonly judges: readonly [string, string];
    readonly common: number;
    readonly kappa: CohenKappa;
    /** With steps counted along none, C3, C2, C1; items with FI left out. */
    readonly linear: CohenKappa;
    readonly quadratic: CohenKappa;
  }[];
  /** Judges that would have had enough in common with another, but of whom there are too many to pair. */
  readonly notPaired: number;
}

/** How many observations were compared, and what was left out and why. */
export interface ChoiceCount {
  readonly inspections: number;
  readonly invented: number;
  readonly observations: number;
  readonly compared: number;
  readonly withoutChoice: number;
  readonly withoutTopic: number;
  readonly withoutFacts: number;
  /** The same choice in a copy of the same inspection; it counts once. */
  readonly copies: number;
  readonly factSets: number;
  /** Sets of facts that were judged more than once. */
  readonly judgedAgain: number;
  /** Sets of facts with too many facts to look for others that are nearly the same. */
  readonly tooManyFacts: number;
}

/** Choices of classification in many inspections, held against each other. */
export interface ChoiceComparison {
  readonly count: ChoiceCount;
  /** The sets of facts that have a part in a difference. */
  readonly sets: readonly ChoiceSet[];
  /** The same facts, judged differently: positions in the list of sets. */
  readonly differences: readonly number[];
  readonly near: readonly NearDifference[];
  readonly agreement: AgreementFigures;
}
