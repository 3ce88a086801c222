import type { AgreementFigures, ChoiceCount, ChosenBy, NotDefined } from "@good-grounds/core";
import { WORDS } from "./en.ts";
import { SILENCE } from "./labels.ts";

/** Fewer sets of facts than this, and every further one moves the figures: a rule of thumb. */
const FEW = 30;

function counted(count: number, one: string, several = `${one}s`): string {
  return `${count} ${count === 1 ? one : several}`;
}

/** A part in whole percent. All is said only of all, and none only of none. */
function percent(part: number, whole: number): string {
  const rounded = Math.round((100 * part) / whole);
  const kept = part < whole ? Math.min(99, rounded) : rounded;
  return `${part > 0 ? Math.max(1, kept) : kept}\u00a0%`;
}

const NOT_DEFINED: Readonly<Record<NotDefined, string>> = {
  "no-items": "not defined: there is no set of facts on which two can be compared",
  "one-category-only": "not defined: only one classification was ever chosen, so chance alone would agree",
};

/** Every sentence of the comparison of choices. A difference is never called an error. */
export const CHOICES = Object.freeze({
  percent,
  compared: ({ compared, observations, inspections }: ChoiceCount) =>
    `Choices of classification: ${compared} compared, of ${counted(observations, "observation")} in ${counted(inspections, "inspection")}.`,
  leftOut: ({ withoutChoice, withoutTopic, withoutFacts, copies }: ChoiceCount) => {
    const parts = [
      withoutChoice > 0 ? `${withoutChoice} without a classification` : "",
      withoutTopic > 0 ? `${withoutTopic} without a topic` : "",
      withoutFacts > 0 ? `${withoutFacts} without facts` : "",
      copies > 0 ? `${counted(copies, "repeat")} in copies of the same inspection` : "",
    ].filter((part) => part !== "");
    return parts.length === 0 ? "" : `Left out: ${parts.join(", ")}.`;
  },
  unused: (count: number) => `${counted(count, "file")} could not be used and ${count === 1 ? "is" : "are"} not in it.`,
  factSets: ({ factSets, judgedAgain }: ChoiceCount) =>
    `${counted(factSets, "set")} of facts, ${judgedAgain} of them judged more than once.`,
  tooManyFacts: (count: number) =>
    `${counted(count, "set")} of facts ${count === 1 ? "is" : "are"} too long to look for others that are nearly the same.`,
  invented: "Invented examples among them: names, places and readings are made up.",

  differences: (different: number, judgedAgain: number) =>
    `The same facts, different choices (${different} of ${judgedAgain} sets judged more than once)`,
  noDifference: "None: wherever the same facts were judged more than once, the choice was the same.",
  noneAgain: "None: no set of facts was judged more than once.",
  near: "One fact apart, different choices",
  nearMeans: "All alike but for one fact or position, which may be the reason.",
  noNear: "None.",
  apart: (topic: string, kind: "fact" | "position", name: string) =>
    `${topic}, alike but for ${kind === "fact" ? "" : "the position taken: "}${name}`,
  nothingElse: "no other fact recorded",
  yes: WORDS.yes,
  no: WORDS.no,
  notKnown: WORDS.notKnown,
  doesNotApply: "does not apply",
  notRecorded: SILENCE.absent,
  position: (point: string) => `position on ${point}`,
  times: (classification: string, count: number) => `${classification}  ${counted(count, "choice")}`,
  where: (file: string, observation: string) => `${file}, its observation ${observation}`,
  more: (count: number) => `and ${count} older`,
  editions: (editions: readonly string[]) => `Judged under different editions: ${editions.join(", ")}.`,

  agreement: "Agreement on the same facts",
  pairs: "pairs of choices",
  within: (by: ChosenBy) => `by the same ${by}`,
  between: (by: ChosenBy) => `by different ${by}s`,
  agreed: (agreed: number, pairs: number) =>
    pairs === 0 ? "no pairs" : `${agreed} of ${pairs} the same (${percent(agreed, pairs)})`,
  several: (judges: number, items: number, by: ChosenBy) =>
    `Fleiss' kappa over ${counted(items, "set")} of facts judged by two or more of ${counted(judges, by)}`,
  shares: (observed: string, expected: string) => `agreement observed ${observed}, expected by chance ${expected}`,
  byClassification: (parts: readonly string[]) => `each against the rest: ${parts.join(", ")}`,
  usual: (varied: number, tied: number, by: ChosenBy) => {
    if (varied + tied === 0) return "";
    const stood = `In kappa each ${by} counts once on a set of facts, with the usual choice: in ${counted(varied, "case")} it was not the only one`;
    const none = tied === 0 ? "" : `, and in ${tied} two were equally usual, so that there is none`;
    return `${stood}${none}. This makes kappa look better than single choices are.`;
  },
  two: (by: ChosenBy, least: number) => `Cohen's kappa of two ${by}s with ${least} or more sets of facts in common`,
  noTwo: "no two have as many in common",
  noInterval: "no interval, since all agree",
  interval: (low: string, high: string) => `95 % interval ${low} to ${high}`,
  common: (common: number) => `${counted(common, "set")} in common`,
  linear: (value: string) => `counting steps none, C3, C2, C1: ${value}`,
  linearWithout: (left: number) => `${left} with FI left out`,
  moreTwo: (count: number) => `and ${counted(count, "more pair")} with fewer in common`,
  notPaired: (count: number, by: ChosenBy) =>
    `${counted(count, by)} with fewer sets in common ${count === 1 ? "was" : "were"} not paired.`,
  notDefined: NOT_DEFINED,
  few: (items: number) => {
    if (items === 0) return "Caution: no set of facts was judged by two or more, so kappa says nothing here.";
    if (items >= FEW) return "";
    return `Caution: only ${counted(items, "set")} of facts judged by two or more. Below ${FEW} the figures move with every further one and say little.`;
  },
  says: "Kappa takes off the agreement that chance would bring: 1 is full agreement, 0 is no more than chance. Where nearly every choice is the same it can be low although nearly all agree.",
  saysNot:
    "It does not say who is right. Only what was recorded is compared: something seen but not written down may explain a difference. The same facts in different places count as the same, and nobody judged them blind, so the figures describe these files and no more.",
  matched: {
    person:
      "Persons are matched across files by name, letter case and spacing aside: two people of one name count as one, one person under two names as two.",
    file: "Files are told apart by the id of the inspection.",
  } satisfies Record<AgreementFigures["by"], string>,
  decides: "A difference is not a mistake. Each choice stands with its reason, and the person who signs decides.",
});
