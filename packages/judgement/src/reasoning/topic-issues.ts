import type { AnswerFault, Issue } from "@good-grounds/core";
import { readAnswers } from "@good-grounds/core";
import type { InspectionFile } from "@good-grounds/inspection";
import {
  compiledTopic,
  formerFaults,
  OWN_TOPICS,
  type Topics,
  withFormerFacts,
  withFormerPositions,
} from "@good-grounds/topics";
import { ANSWERABLE, isAnswerable } from "../outcome/answerable.ts";
import { factsFromFigures, partedSaid } from "./worked/index.ts";

/** Everything wrong with the topics, facts and positions of a file's observations: they are checked here because only here is it known what a topic asks. */
export function topicIssues(file: InspectionFile, topics: Topics = OWN_TOPICS): readonly Issue[] {
  const issues: Issue[] = [];
  for (const [
    number,
    { topic: name, facts: stated = {}, positions = {}, answers = [] },
  ] of file.observations.entries()) {
    for (const [j, { check }] of answers.entries())
      if (!isAnswerable(check)) issues.push(noCheck(["observations", number, "answers", j, "check"], check));
    if (name === undefined) continue;
    const topic = topics.byId(name);
    const at = ["observations", number] as const;
    if (topic === undefined) {
      issues.push(noTopic([...at, "topic"], name, topics));
      continue;
    }
    const said = partedSaid(topic, withFormerFacts(topic, stated));
    const compiled = compiledTopic(topic);
    const { faults } = readAnswers(compiled, {
      facts: said.facts,
      positions: Object.fromEntries(
        Object.entries(withFormerPositions(topic, positions)).map(([point, { position }]) => [point, position]),
      ),
    });
    issues.push(...[...formerFaults(topic, stated), ...faults].map((fault) => answerIssue(fault, [...at])));
    for (const issue of factsFromFigures(topic, said.figures).issues)
      issues.push({ ...issue, path: [...at, "facts", ...issue.path] });
  }
  const viewed = new Set<string>();
  for (const [number, { topic: name, point, position }] of (file.standingViews ?? []).entries()) {
    const key = JSON.stringify([name, point]);
    if (viewed.has(key))
      issues.push({
        code: "given-twice",
        path: ["standingViews", number, "point"],
        found: point,
        expected: "one standing view on each contested point",
        advice: "keep the one that the firm holds",
      });
    viewed.add(key);
    const topic = topics.byId(name);
    if (topic === undefined) {
      issues.push(noTopic(["standingViews", number, "topic"], name, topics));
      continue;
    }
    const { faults } = readAnswers(compiledTopic(topic), {
      facts: {},
      positions: withFormerPositions(topic, { [point]: position }),
    });
    issues.push(
      ...faults.map((fault) => ({
        ...answerIssue(fault, []),
        path: ["standingViews", number, fault.code === "unknown-point" ? "point" : "position"],
      })),
    );
  }
  return issues;
}

/** A fault of an answer as an issue at its place below an observation. */
export function answerIssue(fault: AnswerFault, at: readonly (string | number)[], flat = false): Issue {
  const { code, name, found, expected } = fault;
  const isPoint = code === "unknown-point" || fault.isPosition === true;
  const short = name.length > 80 ? `${name.slice(0, 79)}…` : name;
  const path = flat ? [short] : [...at, isPoint ? "positions" : "facts", short];
  const list = expected.join(", ");
  switch (code) {
    case "unknown-fact":
      return { code, path, found, expected: `one of the topic's facts: ${list}`, advice: "check the name" };
    case "unknown-point":
      return {
        code,
        path,
        found,
        expected: `one of the topic's contested points: ${list || "it has none"}`,
        advice: "check the name",
      };
    case "not-a-value":
      return {
        code,
        path,
        found,
        expected: isPoint ? `one of ${list}` : `one of ${list}; several that are possible as "a | b"`,
        advice: "choose one of these",
      };
    case "not-a-quantity":
      return {
        code,
        path,
        found,
        expected: `a quantity in ${list}`,
        advice: 'write a number and its unit, such as "45 mm", or a range, such as "40 mm to 55 mm"',
      };
    case "backwards":
      return { code, path, found, expected: "the smaller value first", advice: "turn the range round" };
  }
}

function noCheck(path: readonly (string | number)[], found: string): Issue {
  return {
    code: "unknown-check",
    path,
    found,
    expected: `the id of a check, or what else can be answered: ${ANSWERABLE.join(", ")}`,
    advice: "name the check that is not met and of which the observation speaks",
  };
}

function noTopic(path: readonly (string | number)[], found: string, topics: Topics): Issue {
  const words = found.split("-").filter((word) => word.length > 2);
  const close = topics.all.map(({ id }) => id).filter((id) => words.some((word) => id.includes(word)));
  return {
    code: "unknown-topic",
    path,
    found,
    expected: close.length > 0 ? `a topic, perhaps ${close.slice(0, 5).join(", ")}` : "the id of a topic",
    advice: "`goodgrounds reason --list` shows the topics",
  };
}
