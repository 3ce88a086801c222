import { readFileSync } from "node:fs";
import { assemble } from "@good-grounds/assembly";
import { COMPUTATIONS } from "@good-grounds/computations";
import { type InspectionFile, parseInspection, parseInspectionData } from "@good-grounds/inspection";
import { CALCULATION, type ReportInput, renderWeighing } from "@good-grounds/report";
import { TOPICS } from "@good-grounds/topics";
import { describe, expect, test } from "vitest";
import { reportModel } from "../../packages/report/src/pdf/model.ts";

const EXAMPLES = ["terraced-house", "farmhouse", "workshop"] as const;
const textOf = (name: string) => readFileSync(new URL(`../../examples/${name}.json`, import.meta.url), "utf8");

function fileOf(name: string): InspectionFile {
  const parsed = parseInspection(textOf(name));
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues));
  return parsed.file;
}

/** Names of checks, topics, facts and contested points of more than one word: nobody writes these in a sentence. */
const NAMES = new Set(
  [
    ...COMPUTATIONS.keys(),
    ...TOPICS.flatMap(({ id, facts, contested }) => [id, ...Object.keys(facts), ...Object.keys(contested)]),
  ].filter((name) => name.includes("-")),
);
/** The trade's own words as well as names of facts. */
for (const word of ["hand-held", "cut-out", "voltage-operated"]) NAMES.delete(word);
/** Names that stand in texts, and the ids of observations, each with the line it stands in. */
function namesIn(lines: readonly string[], ids: readonly string[]): readonly string[] {
  const among = new Set(ids);
  return lines.flatMap((line) =>
    [...line.matchAll(/(?<![\w-])[a-z0-9]+(?:-[a-z0-9]+)*(?![\w-])/g)].flatMap(([word]) =>
      NAMES.has(word) || among.has(word) ? [`${word}: ${line.trim()}`] : [],
    ),
  );
}

/** Every text of the printed report, without the names of its parts and drawings. */
function textsOf(value: unknown): readonly string[] {
  if (typeof value === "string") return [value];
  if (Array.isArray(value)) return value.flatMap(textsOf);
  return typeof value === "object" && value !== null ? Object.values(value).flatMap(textsOf) : [];
}

const idsOf = (file: InspectionFile) => file.observations.map(({ id }) => id);
const terminal = (input: ReportInput) => renderWeighing(input, { width: 400, all: true, grounds: true }).split("\n");

/** The example with an observation of our own on every topic, on each of these places, with nothing stated, or every fact at its best or worst. */
function everyTopic(end: "nothing" | "best" | "worst"): InspectionFile {
  const file = JSON.parse(textOf("terraced-house")) as { observations: object[]; signatures: object[] };
  file.signatures = [];
  file.observations = TOPICS.map((topic, i) => {
    const facts = Object.fromEntries(
      Object.entries(topic.facts).flatMap(([name, fact]) => {
        if (end === "nothing" || fact.kind === "quantity") return [];
        const values =
          fact.kind === "yes-no" ? (fact.worse === "yes" ? ["no", "yes"] : ["yes", "no"]) : Object.keys(fact.values);
        return [[name, values.at(end === "best" ? 0 : -1)]];
      }),
    );
    return {
      id: `seen-${i}`,
      place: "landing",
      what: "Seen.",
      board: "cu",
      circuit: i % 2 === 0 ? "c5" : "c6",
      topic: topic.id,
      facts,
    };
  });
  const parsed = parseInspectionData({ ...file, inspected: [] });
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues));
  return parsed.file;
}

describe("no name of a check, topic or fact, and no id of an observation, stands in a sentence", () => {
  test("what answered has words, for everything that can be computed and for nothing else", () => {
    expect(Object.keys(CALCULATION).sort()).toEqual([...COMPUTATIONS.keys()].sort());
    expect(new Set(Object.values(CALCULATION)).size).toBe(COMPUTATIONS.size);
  });

  test.each(EXAMPLES)("%s", (name) => {
    const file = fileOf(name);
    const input = assemble(file, true);
    expect(namesIn(terminal(input), idsOf(file))).toEqual([]);
    expect(namesIn(textsOf(reportModel(input).data), idsOf(file))).toEqual([]);
  });

  test.each(["nothing", "best", "worst"] as const)("an observation on every topic, stated of every fact: %s", (end) => {
    const file = everyTopic(end);
    const input = assemble(file);
    const shown = end === "nothing" ? "worked" : "against";
    expect(input.reasoned.some((one) => one[shown].length > 0)).toBe(true);
    expect(namesIn(terminal(input), idsOf(file))).toEqual([]);
    expect(namesIn(textsOf(reportModel(input).data), idsOf(file))).toEqual([]);
  });
});
