import { createInterface } from "node:readline";
import { type FactOf, type Issue, severitiesOf, unitSymbol } from "@good-grounds/core";
import { answerIssue, needsOf, reasonAbout, type TopicReasoning } from "@good-grounds/judgement";
import { headline, REASONING, renderReasoning, severityWords, TOPIC_GROUP, WORDS, wrapped } from "@good-grounds/report";
import { TOPIC_GROUPS, type Topic, type Topics } from "@good-grounds/topics";
import { EXIT, type ExitCode, type Host, Stop, widthOf } from "../host.ts";
import { problemsJson } from "../json.ts";
import { reasoningJson } from "../reasoning-json.ts";
import { folderJson, folderLines, topicsIn } from "../topics-in.ts";
import { issueLines } from "../words.ts";

export interface ReasonOptions {
  readonly list: boolean;
  readonly help: boolean;
  readonly json: boolean;
  /** The firm's own folder of topics and standing views. */
  readonly topics: string | undefined;
}

/** What has been said so far: answers by fact, positions by contested point. */
interface Said {
  readonly facts: Record<string, string | { readonly notKnown: "limited"; readonly reason: string }>;
  readonly positions: Record<string, string>;
  readonly figures: Record<string, string>;
}

/** `goodgrounds reason`: the line of reasoning of one topic, asked for question by question or from facts given. */
export async function reasonCommand(args: readonly string[], options: ReasonOptions, host: Host): Promise<ExitCode> {
  const width = widthOf(host);
  const topics = topicsIn(options.topics);
  if (options.list) {
    const searched = args.length > 0;
    const wanted = searched ? topics.find(args.join(" ")).slice(0, MOST_FOUND) : topics.all;
    if (wanted.length === 0)
      throw new Stop(EXIT.input, "reason: no topic has these words. `goodgrounds reason --list` shows them all.");
    host.stdout.write(
      options.json ? `${JSON.stringify(wanted.map(labelOf), null, 2)}\n` : listing(wanted, width, searched),
    );
    return EXIT.done;
  }
  const [name, ...pairs] = args;
  if (name === undefined)
    throw new Stop(EXIT.input, "reason: no topic given. `goodgrounds reason --list` shows the topics.");
  const topic = topics.byId(name);
  if (topic === undefined)
    throw new Stop(
      EXIT.input,
      `reason: no topic is called ${JSON.stringify(name.slice(0, 60))}.${nearest(name, topics)}`,
    );
  if (options.help) {
    host.stdout.write(describe(topic, width));
    return EXIT.done;
  }
  const said = saidIn(pairs, topic, topics.positionsOn(topic));
  const first = reasoned(topic, said);
  if (first.issues.length > 0) {
    if (options.json) host.stdout.write(`${JSON.stringify(problemsJson(name, first.issues), null, 2)}\n`);
    host.stderr.write(issueLines(`reason ${name}`, first.issues));
    return EXIT.input;
  }
  if (options.json) {
    host.stdout.write(`${JSON.stringify({ ...reasoningJson(first.one), ...folderJson(topics) }, null, 2)}\n`);
    return EXIT.done;
  }
  const last = host.interactive && isTerminal(host.stdin) ? await ask(topic, said, first.one, host, width) : first.one;
  host.stdout.write(
    `${[topic.title, "─".repeat(width), ...folderLines(topics, width), ...renderReasoning(last, width), "", ...wrapped(WORDS.competent, width)].join("\n")}\n`,
  );
  return EXIT.done;
}

function reasoned(topic: Topic, said: Said): { readonly one: TopicReasoning; readonly issues: readonly Issue[] } {
  const one = reasonAbout({ topic, said: { ...said.facts, ...said.figures }, positions: said.positions });
  return { one, issues: [...one.issues, ...one.faults.map((fault) => answerIssue(fault, [], true))] };
}

type Leaves = NonNullable<TopicReasoning["reasoning"]["next"]>["leaves"];

/** Asks the next question until nothing is left that an answer could settle. */
async function ask(
  topic: Topic,
  said: Said,
  start: TopicReasoning,
  host: Host,
  width: number,
): Promise<TopicReasoning> {
  const lines = createInterface({ input: host.stdin, crlfDelay: Number.POSITIVE_INFINITY });
  const answers = lines[Symbol.asyncIterator]();
  let one = start;
  host.stderr.write(`${topic.title}\n${wrapped(REASONING.howToAnswer, width).join("\n")}\n`);
  try {
    for (let next = one.reasoning.next; next !== undefined; next = one.reasoning.next) {
      const fact = topic.facts[next.fact] as FactOf;
      host.stderr.write(
        `\n${wrapped(headline(one), width).join("\n")}\n${questionLines(fact, next.leaves, width).join("\n")}\n> `,
      );
      const typed = await answers.next();
      if (typed.done === true) break;
      const text = typed.value.trim();
      if (text === "") break;
      const answer = readTyped(text, fact, next.leaves);
      if (answer === undefined) {
        host.stderr.write(`${wrapped(REASONING.notUnderstood, width).join("\n")}\n`);
        continue;
      }
      said.facts[next.fact] = answer;
      const after = reasoned(topic, said);
      if (after.issues.length > 0) {
        delete said.facts[next.fact];
        host.stderr.write(issueLines(next.fact, after.issues));
        continue;
      }
      one = after.one;
    }
  } finally {
    lines.close();
  }
  host.stderr.write("\n");
  return one;
}

function questionLines(fact: FactOf, leaves: Leaves, width: number): string[] {
  const choices = leaves.map(({ value, possible }, i) => {
    const clause =
      fact.kind === "yes-no"
        ? fact[value as "yes" | "no"]
        : fact.kind === "choice"
          ? (fact.values[value] ?? value)
          : value;
    // A quantity is typed, not chosen by number, so its ranges bear none.
    const lead = fact.kind === "quantity" ? "     " : `  ${i + 1}  `;
    return wrapped(`${clause} → ${severityWords(severitiesOf(possible))}`, width, lead, "     ");
  });
  const unit = fact.kind === "quantity" ? [`  a quantity in ${unitSymbol(fact)} or a multiple of it`] : [];
  return [...wrapped(fact.asks, width), ...choices.flat(), ...unit];
}

/** A number chooses a listed answer, "?" says that it cannot be settled within the extent, anything else is the answer itself. */
function readTyped(text: string, fact: FactOf, leaves: Leaves): Said["facts"][string] | undefined {
  if (text === "?") return { notKnown: "limited", reason: "not settled when asked" };
  if (fact.kind === "quantity") return text;
  const values = fact.kind === "yes-no" ? ["yes", "no"] : Object.keys(fact.values);
  if (/^\d{1,2}$/.test(text)) return leaves[Number(text) - 1]?.value;
  const short = values.filter((value) => value.startsWith(text.toLowerCase()));
  if (values.includes(text.toLowerCase())) return text.toLowerCase();
  return short.length === 1 ? short[0] : undefined;
}

function saidIn(pairs: readonly string[], topic: Topic, views: Said["positions"]): Said {
  const said: Said = { facts: Object.create(null), positions: { ...views }, figures: Object.create(null) };
  const figures = needsOf(topic);
  const named = new Set<string>();
  for (const pair of pairs) {
    const at = pair.indexOf("=");
    if (at < 1)
      throw new Stop(
        EXIT.input,
        `reason ${topic.id}: ${JSON.stringify(pair.slice(0, 60))} is no pair. Write fact=value; --help shows the facts.`,
      );
    const name = pair.slice(0, at);
    const value = pair.slice(at + 1);
    if (named.has(name))
      throw new Stop(
        EXIT.input,
        `reason ${topic.id}: ${JSON.stringify(name.slice(0, 60))} is given twice. Several values that are possible stand as "a | b".`,
      );
    named.add(name);
    if (Object.hasOwn(topic.contested, name)) said.positions[name] = value;
    else if (!Object.hasOwn(topic.facts, name) && figures.has(name)) said.figures[name] = value;
    else said.facts[name] = value === "?" ? { notKnown: "limited", reason: "not settled when asked" } : value;
  }
  return said;
}

function isTerminal(stdin: Host["stdin"]): boolean {
  return "isTTY" in stdin && stdin.isTTY === true;
}

function labelOf({ id, title, group }: Topic): object {
  return { id, title, group };
}

/** More than these nobody reads; another word narrows them down. */
const MOST_FOUND = 12;

/** Topics by the parts of an installation, or as they were found, the best first. */
function listing(wanted: readonly Topic[], width: number, searched: boolean): string {
  const lineOf = ({ id, title }: Topic) => wrapped(title, width, `  ${id.padEnd(32)} `, " ".repeat(35));
  const lines = searched
    ? [...wanted.flatMap(lineOf), ""]
    : TOPIC_GROUPS.flatMap((group) => [
        TOPIC_GROUP[group],
        ...wanted.filter((one) => one.group === group).flatMap(lineOf),
        "",
      ]);
  return `${lines.join("\n")}goodgrounds reason TOPIC --help shows what a topic asks.\n`;
}

function describe(topic: Topic, width: number): string {
  const facts = Object.entries(topic.facts).flatMap(([name, fact]) => [
    ...wrapped(fact.asks, width, `  ${name}: `, "      "),
    ...(fact.kind === "quantity"
      ? [`      a quantity in ${unitSymbol(fact)}`]
      : Object.entries(fact.kind === "yes-no" ? { yes: fact.yes, no: fact.no } : fact.values).flatMap(
          ([value, clause]) => wrapped(`${value} = ${clause}`, width, "      ", "        "),
        )),
  ]);
  const points = Object.entries(topic.contested).flatMap(([name, { question, positions }]) => [
    ...wrapped(question, width, `  ${name}: `, "      "),
    ...Object.entries(positions).flatMap(([position, { words }]) =>
      wrapped(`${position} = ${words}`, width, "      ", "        "),
    ),
  ]);
  const figures = [...needsOf(topic)].flatMap(([need, by]) =>
    Object.hasOwn(topic.facts, need) ? [] : wrapped(`for ${by.join(", ")}`, width, `  ${need}: `, "      "),
  );
  const [example] = topic.examples;
  const pairs = Object.entries(example?.facts ?? {}).map(([name, value]) => {
    const text = value === true ? "yes" : value === false ? "no" : typeof value === "string" ? value : "?";
    return `${name}=${/[^\w.-]/.test(text) ? `"${text}"` : text}`;
  });
  return [
    topic.title,
    "",
    "Facts:",
    ...facts,
    ...(points.length === 0 ? [] : ["", "Contested points, the more usual position first:", ...points]),
    ...(figures.length === 0 ? [] : ["", "Figures that a computation can use instead:", ...figures]),
    "",
    "Example:",
    ...wrapped(`goodgrounds reason ${topic.id} ${pairs.join(" ")}`, width, "  ", "    "),
    "",
  ].join("\n");
}

function nearest(name: string, topics: Topics): string {
  const close = topics.find(name);
  return close.length === 0
    ? " `goodgrounds reason --list` shows the topics."
    : ` Did you mean ${close
        .slice(0, 5)
        .map(({ id }) => id)
        .join(", ")}?`;
}
