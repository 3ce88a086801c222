import { type Compiled, cheapest, type Knowledge, nextQuestion, settledIn } from "@good-grounds/core";
import { TOPIC_GROUP } from "@good-grounds/report";
import { compiledTopic, TOPIC_GROUPS, TOPICS, type Topic } from "@good-grounds/topics";
import { unusedShared, warningsOf } from "@good-grounds/topics/laws";
import { ownTexts, readLibrary } from "@good-grounds/topics/texts";
import { countOf, EXHAUSTIVE } from "./assignments.ts";
import { questionsNeeded } from "./questions.ts";

/** Facts beyond which the cheapest way of asking is not worked out for comparison. */
const COMPARED_UP_TO = 9;

interface Figures {
  readonly facts: number;
  readonly assignments: number;
  readonly mean: number;
  readonly worst: number;
  readonly least: number | undefined;
}

/** The list of topics with, for each, what the laws were tried on and what settling it takes. */
export function topicsMarkdown(): string {
  const figures = new Map(TOPICS.map((topic) => [topic.id, figuresOf(topic)]));
  const ratios = [...figures.values()].flatMap(({ mean, least }) =>
    least === undefined || least === 0 ? [] : [mean / least],
  );
  const lines = [
    "# Topics",
    "",
    `${TOPICS.length} subjects of observation. Written by \`npm run topics\`; a test keeps it true.`,
    "",
    countsOfTexts(),
    "",
    `Assignments are all ways of giving facts and contested points values. The laws are tried on each of them up to ${EXHAUSTIVE.toLocaleString("en-GB").replaceAll(",", " ")}, beyond on as many drawn at random; that no worsening lowers a severity is proved for all of them. Questions are counted until the classification is settled under the more usual positions, every answer taken to be as likely as the next; *least* is what the best possible way of asking takes on average.`,
    "",
    "Under a group stands what is danger by itself in its topics, with the least classification that no other answer takes away.",
    "",
    `Over all topics the order asked in takes ${(ratios.reduce((sum, ratio) => sum + ratio, 0) / ratios.length).toFixed(3)} times the least possible number of questions on average, and ${Math.max(...ratios).toFixed(3)} times at most (${ratios.length} topics compared).`,
    "",
  ];
  for (const group of TOPIC_GROUPS) {
    const topics = TOPICS.filter((topic) => topic.group === group);
    if (topics.length === 0) continue;
    lines.push(
      `## ${TOPIC_GROUP[group]}`,
      "",
      "| topic | id | facts | contested | assignments | questions, mean | worst | least |",
      "|---|---|---|---|---|---|---|---|",
      ...topics.map(({ id, title, contested }) => {
        const { facts, assignments, mean, worst, least } = figures.get(id) as Figures;
        return `| ${title} | \`${id}\` | ${facts} | ${Object.keys(contested).length} | ${assignments} | ${mean.toFixed(2)} | ${worst} | ${least?.toFixed(2) ?? ""} |`;
      }),
      "",
    );
    const dangers = topics.flatMap(({ id, dangers: own = [] }) =>
      own.map(({ least, words, regulations }) => `- \`${id}\`: ${words} → ${least} (${regulations.join(", ")})`),
    );
    if (dangers.length > 0) lines.push("Danger whatever else is said:", "", ...dangers, "");
  }
  return lines.join("\n");
}

/** What the texts come to, and what of them does nothing. */
function countsOfTexts(): string {
  const texts = ownTexts();
  const { documents } = readLibrary(texts);
  const of = (kind: string) =>
    documents.reduce((sum, { statements }) => sum + statements.filter((one) => one.kind === kind).length, 0);
  const lengths = texts.map(({ text }) => text.split("\n").length - 1).sort((a, b) => a - b);
  const lines = lengths.reduce((sum, one) => sum + one, 0);
  const shared = documents.filter(({ kind }) => kind === "shared").length;
  const warnings = [...TOPICS.flatMap(warningsOf), ...unusedShared(documents)].length;
  return `They stand in ${texts.length} texts, ${shared} of them shared, of ${grouped(lines)} lines, median ${lengths[Math.floor(lengths.length / 2)]}: ${grouped(of("fact") + of("amount"))} facts, ${of("contested")} contested points, ${of("state")} states, ${of("route")} routes, ${of("departure")} departures, ${of("danger")} dangers, ${of("contradiction")} contradictions, ${of("remedy")} remedies, ${grouped(of("example"))} examples. ${warnings} warnings are left: answers that no rule tells apart, and shared names that nothing uses. [The language](topics-language.md) is on one page; \`goodgrounds topics show ID\` prints a text.`;
}

function grouped(count: number): string {
  return count.toLocaleString("en-GB").replaceAll(",", " ");
}

function figuresOf(topic: Topic): Figures {
  const compiled = compiledTopic(topic);
  const masks = usual(compiled);
  const one = () => 1;
  const { mean, worst } = questionsNeeded(compiled, masks, (_, known) => {
    const question = nextQuestion(compiled, knowing(known), one);
    return question === undefined ? undefined : compiled.index.get(`fact ${question.fact}`);
  });
  const facts = Object.keys(topic.facts).length;
  const root = settledIn(compiled, compiled.root, masks);
  return {
    facts,
    assignments: countOf(compiled.variables.map(({ cells }) => 2 ** cells.values.length - 1)),
    mean,
    worst,
    least: facts <= COMPARED_UP_TO ? cheapest(compiled, root, knowing(masks), one).price : undefined,
  };
}

function usual({ variables }: Compiled): readonly number[] {
  return variables.map(({ kind, cells }) => (kind === "point" ? 1 : 2 ** cells.values.length - 1));
}

function knowing(masks: readonly number[]): Knowledge {
  return { masks, beyond: new Set(), grounds: new Map() };
}
