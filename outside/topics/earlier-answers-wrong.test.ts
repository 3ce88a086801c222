import { parseInspectionData } from "@good-grounds/inspection";
import { reasonAbout, topicIssues } from "@good-grounds/judgement";
import { TOPICS, type Topic, topicById } from "@good-grounds/topics";
import { describe, expect, test } from "vitest";
import { changed } from "../reports/example.ts";

function topicOf(id: string) {
  const topic = topicById(id);
  if (topic === undefined) throw new Error(`no topic ${id}`);
  return topic;
}

/** The values a fact of earlier files had: those that are named, or those of the fact today where the name alone changed. */
function valuesOf({ facts }: Topic, { fact, says }: NonNullable<Topic["formerly"]>[string][number]): readonly string[] {
  const named = Object.keys(says);
  const today = facts[fact];
  return named.length > 0 || today?.kind !== "choice" ? named : Object.keys(today.values);
}

describe("a value that a fact of earlier files never had", () => {
  test("is told with its place in the file and the values that fit", () => {
    const parsed = parseInspectionData(
      JSON.parse(
        changed((file) => {
          const observation = { topic: "outdoor-luminaire-damaged", facts: { state: "live-in-reech" } };
          Object.assign(file, { observations: [{ id: "x", place: "p", what: "w", ...observation }], inspected: [] });
        }),
      ),
    );
    if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues));
    const [issue, ...others] = topicIssues(parsed.file);
    expect(others).toEqual([]);
    expect(issue).toMatchObject({
      code: "not-a-value",
      path: ["observations", 0, "facts", "state"],
      found: "live-in-reech",
    });
    expect(issue?.expected).toContain("live-in-reach");
  });

  test("is told where one of several is wrong, and where the name alone changed", () => {
    const faults = (id: string, said: Record<string, string>) =>
      reasonAbout({ topic: topicOf(id), said }).faults.map(({ code, name, found }) => [code, name, found]);
    expect(faults("outdoor-luminaire-damaged", { state: "weathered | swolen" })).toEqual([
      ["not-a-value", "state", "weathered | swolen"],
    ]);
    expect(faults("outdoor-luminaire-damaged", { state: "Weathered" })).toEqual([]);
    const [renamed] = TOPICS.flatMap(({ id, formerly = {}, facts }) =>
      Object.entries(formerly).flatMap(([name, ways]) =>
        ways.some(({ fact, says }) => Object.keys(says).length === 0 && facts[fact]?.kind === "choice")
          ? [{ id, name }]
          : [],
      ),
    );
    if (renamed === undefined) throw new Error("no fact of which the name alone changed");
    expect(faults(renamed.id, { [renamed.name]: "nothing-of-the-kind" })).toEqual([
      ["not-a-value", renamed.name, "nothing-of-the-kind"],
    ]);
  });

  test.each(
    TOPICS.flatMap(({ id, formerly = {} }) =>
      Object.entries(formerly).flatMap(([name, ways]) =>
        ways.some(({ says }) => Object.keys(says).length > 0) ? [[id, name] as const] : [],
      ),
    ),
  )("%s, %s: told, and of the values it had none is", (id, name) => {
    const topic = topicOf(id);
    const values = new Set((topic.formerly?.[name] ?? []).flatMap((one) => valuesOf(topic, one)));
    const faults = (value: string) => reasonAbout({ topic, said: { [name]: value } }).faults;
    expect(faults("nothing-of-the-kind").map((fault) => [fault.name, [...fault.expected].sort()])).toEqual([
      [name, [...values].sort()],
    ]);
    for (const value of values) expect(faults(value), value).toEqual([]);
    if (values.has("yes") || values.has("no")) expect(values).toEqual(new Set(["yes", "no"]));
  });
});
