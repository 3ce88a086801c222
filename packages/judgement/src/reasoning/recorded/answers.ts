import { type FactGround, type FactOf, isKnown, type Recorded } from "@good-grounds/core";
import type { Topic } from "@good-grounds/topics";
import type { RecordedFact } from "../results.ts";
import type { SpokenOf } from "../spoken-of/index.ts";
import { recordedProperty } from "./properties.ts";
import type { RecordedProperty, Recording } from "./property.ts";

/** What one thing says of a fact: an answer, or nothing where the property is not known or leaves the fact open. */
export type RecordedAnswer = RecordedFact | { readonly fact: string; readonly value: null };

/** What the inspection records of the facts of a topic: an answer for each thing that the observation may mean. */
export function answersFromRecord(topic: Pick<Topic, "facts">, spoken: SpokenOf): readonly RecordedAnswer[] {
  return Object.entries(topic.facts).flatMap(([name, about]) => {
    const { recorded: link } = about;
    const property = link === undefined ? undefined : recordedProperty(link.property);
    if (link === undefined || property === undefined) return [];
    return property.read(spoken).map((recording): RecordedAnswer => {
      const value = about.kind === "quantity" ? asRecorded(recording.leaf, about) : given(link, recording);
      if (value === null) return { fact: name, value };
      const { leaf, of } = recording;
      return { fact: name, property: property.id, words: wordsOf(property, recording), value, leaf, of: [of] };
    });
  });
}

/** The answers that the recorded values give together; null where one of them gives none. */
function given({ gives }: Recorded, { values }: Recording): string | null {
  const answers = values.map((value) => (Object.hasOwn(gives, value) ? gives[value] : undefined));
  if (answers.length === 0 || answers.includes(undefined)) return null;
  return [...new Set(answers.flatMap((answer) => (answer ?? "").split("|").map((one) => one.trim())))].join(" | ");
}

/** A quantity as it was written, where it is one in the unit of the fact. */
function asRecorded(leaf: FactGround, about: Extract<FactOf, { kind: "quantity" }>): string | null {
  if (leaf.kind !== "seen" && leaf.kind !== "measured") return null;
  return isKnown(leaf) && leaf.term.unit === about.unit ? leaf.detail.text : null;
}

function wordsOf({ name }: RecordedProperty, { leaf }: Recording): string {
  const isText = leaf.kind === "fact" || leaf.kind === "seen" || leaf.kind === "measured";
  const text = !isText
    ? ""
    : leaf.detail.text === "true"
      ? "yes"
      : leaf.detail.text === "false"
        ? "no"
        : leaf.detail.text;
  return `${name}: ${text}`;
}
