import { bitsOf, type Compiled, possibleLeaves, readAnswers, SEVERITIES } from "@good-grounds/core";
import { compiledTopic, TOPICS, topicById } from "@good-grounds/topics";
import { describe, expect, test } from "vitest";
import { DANGER_STATEMENTS, type DangerStatement } from "./danger-statements.ts";
import { CONSIDERED } from "./dangers-considered.ts";

/** Everything still possible once a statement is made: read off the diagram, so for every assignment of the rest. */
function possibleWith(compiled: Compiled, { facts, views }: DangerStatement): readonly number[] {
  const masks = compiled.variables.map(({ kind, cells }) =>
    kind === "point" && views === "usual" ? 1 : 2 ** cells.values.length - 1,
  );
  for (const [fact, value] of Object.entries(facts)) {
    const variable = compiled.index.get(`fact ${fact}`);
    const cell = variable === undefined ? -1 : (compiled.variables[variable]?.cells.values.indexOf(value) ?? -1);
    if (variable === undefined || cell < 0) throw new Error(`${compiled.subject.id} does not ask ${fact} = ${value}`);
    masks[variable] = 1 << cell;
  }
  return bitsOf(possibleLeaves(compiled, compiled.root, masks));
}

const name = ({ topic, facts, least }: DangerStatement) =>
  [
    topic,
    Object.entries(facts)
      .map((pair) => pair.join(" "))
      .join(", "),
    least,
  ] as const;

describe("danger by itself", () => {
  test.each(DANGER_STATEMENTS.map((one) => [...name(one), one] as const))(
    "%s, %s: %s at the least, whatever else is said",
    (topic, _facts, least, statement) => {
      const subject = topicById(topic);
      if (subject === undefined) throw new Error(`no topic ${topic}`);
      const possible = possibleWith(compiledTopic(subject), statement).map((leaf) => SEVERITIES[leaf]);
      expect(possible.filter((severity) => SEVERITIES.indexOf(severity ?? "none") < SEVERITIES.indexOf(least))).toEqual(
        [],
      );
    },
  );

  /** Words by which an electrician says that something is live, hot, burnt, arcing or open. */
  const DANGER =
    /live metal|live parts?\b|\bbare\b|dangerous voltage|true earth|\bheat\b|\bhot\b|scorch|charr|melt|burn|brown|discolour|brittle|smok|smell|crackl|\barc|swollen|leaking|open circuit|finger|crumbl|overheat|poor joint|loose, corroded/i;
  const saysNot =
    /^(no\b|there (is|are) no\b|nothing\b|a finger does not|neither\b)|\bnot be (touched|reached)\b|no sign of heat|no mark/i;

  /** Every value of a fact whose words speak of danger, but the best of an order. */
  const spoken = TOPICS.flatMap(({ id, facts }) =>
    Object.entries(facts).flatMap(([fact, about]) => {
      if (about.kind === "quantity") return [];
      const values =
        about.kind === "choice"
          ? Object.entries(about.values).slice(about.ordered ? 1 : 0)
          : (
              [
                ["yes", about.yes],
                ["no", about.no],
              ] as const
            ).filter(([value]) => about.worse === null || value === about.worse);
      return values.flatMap(([value, words]) =>
        DANGER.test(words) && !saysNot.test(words) ? [[id, fact, value, words] as const] : [],
      );
    }),
  );

  const marked = new Set(
    DANGER_STATEMENTS.flatMap(({ topic, facts }) => Object.entries(facts).map((pair) => [topic, ...pair].join(" "))),
  );

  test("everything in a topic that speaks of it is marked, or was looked at and is none by itself", () => {
    const open = spoken.filter(
      ([id, fact, value]) =>
        !marked.has(`${id} ${fact} ${value}`) && CONSIDERED[`${id} ${fact} ${value}`] === undefined,
    );
    expect(open.map((one) => one.join(" | ")).join("\n")).toBe("");
  });

  test("nothing is excused that is not said, or that is marked", () => {
    const said = new Set(spoken.map(([id, fact, value]) => `${id} ${fact} ${value}`));
    expect(Object.keys(CONSIDERED).filter((one) => !said.has(one) || marked.has(one))).toEqual([]);
  });
});

describe("the dangers of the topics", () => {
  const dangers = TOPICS.flatMap((topic) => (topic.dangers ?? []).map((danger) => [topic, danger] as const));

  test("there are some", () => {
    expect(dangers.length).toBeGreaterThan(15);
  });

  test.each(dangers.map(([topic, danger]) => [topic.id, danger.id, topic, danger] as const))(
    "%s, %s: some remedy takes it away",
    (_, id, topic) => {
      const compiled = compiledTopic(topic);
      const holds = compiled.dangers.find(({ danger }) => danger.id === id)?.holds as number;
      const leaves = topic.remedies.map(({ changes }) => {
        const { masks } = readAnswers(compiled, { facts: changes }).knowledge;
        const anyView = masks.map((mask, at) => {
          const { kind, cells } = compiled.variables[at] as Compiled["variables"][number];
          return kind === "fact" ? mask : 2 ** cells.values.length - 1;
        });
        return possibleLeaves(compiled, holds, anyView);
      });
      expect(leaves).toContain(1);
    },
  );
});
