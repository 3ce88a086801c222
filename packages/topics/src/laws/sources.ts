import type { Document, Node, Statement } from "../document/document.ts";
import type { Topic } from "../topic.ts";
import type { LawBreak, LawSubject } from "./law.ts";

/** Fewer examples show too little. */
const FEWEST_EXAMPLES = 3;
const REGULATION = /^(?:\d{3}(?:\.\d{1,3}){0,5}|Appendix \d+|Table \d+[\d.A-Z]*)$/;

/** What names regulations, with its place. */
interface Citing extends Pick<Node, "at"> {
  readonly regulations: readonly string[];
}

/** A topic says where its rules come from, and has examples enough. */
export function sourcesAreNamed({ topic, document }: Pick<LawSubject, "topic" | "document">): readonly LawBreak[] {
  const tell = (found: string, expected: string, { at }: Pick<Node, "at"> = document): LawBreak => ({
    law: "sources",
    topic: topic.id,
    found,
    expected,
    at,
  });
  const count = topic.examples.length;
  return [
    ...(citedBy(topic) === 0
      ? [tell("no regulation is named", "numbers in brackets behind layers, departures or dangers")]
      : []),
    ...citingIn(document).flatMap((one) =>
      one.regulations
        .filter((number) => !REGULATION.test(number))
        .map((number) =>
          tell(`"${number}" in brackets`, 'the number of a regulation, such as "411.3.3", or "Appendix 3"', one),
        ),
    ),
    ...(count < FEWEST_EXAMPLES
      ? [tell(`examples: ${count}`, `${FEWEST_EXAMPLES} or more, each with its source`)]
      : []),
  ];
}

/** How many regulations a topic names, those of shared dangers among them. */
function citedBy({ paths, departures, dangers = [] }: Topic): number {
  return [...paths.flatMap(({ layers }) => layers), ...departures, ...dangers].reduce(
    (count, { regulations = [] }) => count + regulations.length,
    0,
  );
}

function citingIn({ statements }: Document): readonly Citing[] {
  return statements.flatMap((one: Statement): readonly Citing[] => {
    if (one.kind === "route") return one.layers;
    return one.kind === "departure" || one.kind === "danger" ? [one] : [];
  });
}
