import { type Compiled, SEVERITIES, type Severity } from "@good-grounds/core";
import { compiledTopic } from "../compiled.ts";
import { drawing } from "../laws/draw.ts";
import { exampleLines } from "../laws/law.ts";
import { assignments, countOf, EXHAUSTIVE } from "../laws/read-directly.ts";
import type { Topic } from "../topic.ts";
import type { Folder } from "./read-folder.ts";

/** Another class for the same facts, with an example for it. */
export interface ClassChange {
  readonly from: Severity;
  readonly to: Severity;
  readonly example: readonly string[];
}

/** What a folder makes of one topic. */
export interface TopicChange {
  readonly topic: string;
  readonly title: string;
  readonly kind: "new" | "more" | "views";
  /** What is asked that was not, and the views held: short words. */
  readonly words: readonly string[];
  readonly classes: readonly ClassChange[];
}

/** What a folder changes against the topics of this package, topic by topic, with an example of each other class. */
export function changesOf({ own, topics }: Pick<Folder, "own" | "topics">): readonly TopicChange[] {
  const before = new Map(own.map((one) => [one.topic.id, one.before]));
  return topics.all.flatMap((topic): TopicChange[] => {
    const base = before.has(topic.id) ? before.get(topic.id) : topic;
    const { id, title } = topic;
    const views = Object.entries(topics.positionsOn(topic));
    if (base === undefined) return [{ topic: id, title, kind: "new", words: viewWords(views), classes: [] }];
    if (base === topic && views.length === 0) return [];
    const classes = classChanges(base, topic, Object.fromEntries(views));
    const kind = base === topic ? "views" : "more";
    return [{ topic: id, title, kind, words: [...addedWords(base, topic), ...viewWords(views)], classes }];
  });
}

function viewWords(views: readonly (readonly [string, string])[]): readonly string[] {
  return views.map(([point, position]) => `the view on ${point}: ${position}`);
}

function addedWords(base: Topic, now: Topic): readonly string[] {
  const names = (what: string, before: readonly string[], after: readonly string[]) => {
    const added = after.filter((one) => !before.includes(one));
    return added.length === 0 ? [] : [`${what}: ${added.join(", ")}`];
  };
  return [
    ...names("facts", Object.keys(base.facts), Object.keys(now.facts)),
    ...names("contested points", Object.keys(base.contested), Object.keys(now.contested)),
    ...names(
      "routes",
      base.paths.map(({ id }) => id),
      now.paths.map(({ id }) => id),
    ),
    ...names(
      "departures",
      base.departures.map(({ words }) => words),
      now.departures.map(({ words }) => words),
    ),
    ...names(
      "dangers",
      (base.dangers ?? []).map(({ id }) => id),
      (now.dangers ?? []).map(({ id }) => id),
    ),
    ...names(
      "remedies",
      base.remedies.map(({ words }) => words),
      now.remedies.map(({ words }) => words),
    ),
    ...names(
      "examples",
      base.examples.map(({ name }) => name),
      now.examples.map(({ name }) => name),
    ),
  ];
}

/** Each other class that the same facts have, with the first example met: every assignment, or as many drawn where there are more. */
function classChanges(base: Topic, now: Topic, views: Readonly<Record<string, string>>): readonly ClassChange[] {
  const [was, is] = [compiledTopic(base), compiledTopic(now)];
  const found = new Map<string, ClassChange>();
  for (const values of cases(is, views)) {
    const from = SEVERITIES[was.diagram.at(was.root, before(was, is, values))] ?? "none";
    const to = SEVERITIES[is.diagram.at(is.root, values)] ?? "none";
    const key = `${from} ${to}`;
    if (from !== to && !found.has(key))
      found.set(key, {
        from,
        to,
        example: exampleLines({ compiled: is }, `${from} is now ${to}`, values, to, "changed by the folder"),
      });
  }
  return [...found.values()];
}

/** Assignments under the views held; of contested points without one, the more usual position. */
function* cases(compiled: Compiled, views: Readonly<Record<string, string>>): Generator<readonly number[]> {
  const masks = compiled.variables.map(({ kind, name, cells }) =>
    kind === "fact" ? 2 ** cells.values.length - 1 : 1 << Math.max(0, cells.values.indexOf(views[name] ?? "")),
  );
  if (countOf(masks) <= EXHAUSTIVE) {
    for (const values of assignments(masks)) yield [...values];
    return;
  }
  const draw = drawing(7671);
  for (let i = 0; i < EXHAUSTIVE; i++)
    yield compiled.variables.map(({ kind, cells }, variable) =>
      kind === "fact" ? draw(cells.values.length) : Math.log2(masks[variable] ?? 1),
    );
}

/** The same facts as the topic had them, under the more usual positions. */
function before(was: Compiled, is: Compiled, values: readonly number[]): readonly number[] {
  return was.variables.map(({ kind, name, cells }) => {
    if (kind === "point") return 0;
    const variable = is.index.get(`fact ${name}`) ?? -1;
    const word = is.variables[variable]?.cells.values[values[variable] ?? 0];
    const same = cells.values.indexOf(word ?? "");
    // Limits that were added part a quantity finer: the range it lies in bears the same lower end.
    return same >= 0 ? same : cellAround(cells.values, word ?? "");
  });
}

function cellAround(ranges: readonly string[], range: string): number {
  const [start = ""] = range.split(",");
  const at = ranges.findIndex((one) => one.startsWith(start));
  return Math.max(0, at);
}
