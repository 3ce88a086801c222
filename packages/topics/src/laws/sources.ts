import type { Topic } from "../topic.ts";
import type { LawBreak } from "./law.ts";

/** Fewer examples show too little. */
const FEWEST_EXAMPLES = 3;
const REGULATION = /^(?:\d{3}(?:\.\d{1,3}){0,5}|Appendix \d+|Table \d+[\d.A-Z]*)$/;

/** A topic says where its rules come from, and has examples enough. */
export function sourcesAreNamed({ id, paths, departures, dangers = [], examples }: Topic): readonly LawBreak[] {
  const law = "sources";
  const cited = [
    ...paths.flatMap(({ layers }) => layers.flatMap(({ regulations }) => regulations ?? [])),
    ...departures.flatMap(({ regulations }) => regulations),
    ...dangers.flatMap(({ regulations }) => regulations),
  ];
  return [
    ...(cited.length === 0
      ? [
          {
            law,
            topic: id,
            found: "no regulation is named",
            expected: "numbers in brackets behind layers, departures or dangers",
          },
        ]
      : []),
    ...cited
      .filter((one) => !REGULATION.test(one))
      .map((one) => ({
        law,
        topic: id,
        found: `"${one}" in brackets`,
        expected: 'the number of a regulation, such as "411.3.3", or "Appendix 3"',
      })),
    ...(examples.length < FEWEST_EXAMPLES
      ? [
          {
            law,
            topic: id,
            found: `examples: ${examples.length}`,
            expected: `${FEWEST_EXAMPLES} or more, each with its source`,
          },
        ]
      : []),
  ];
}
