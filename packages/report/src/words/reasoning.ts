import type {
  Change,
  Classification,
  Evidence,
  FactGround,
  FactOf,
  Judgement,
  Layer,
  Path,
  Reasoning,
  Severity,
  Subject,
  Unit,
} from "@good-grounds/core";
import { LAYER_STATES, SEVERITIES, severitiesOf } from "@good-grounds/core";
import type { CableDrawing } from "../drawings/cable-section.ts";
import type { ProbeDrawing } from "../drawings/probe.ts";
import type { LayersDrawing } from "../drawings/protection-layers.ts";
import { CLASSIFICATION, SILENCE } from "../locales/en.ts";
import { HAZARD, PROVISION, REASONING, SEVERITY_WORDS } from "../locales/reasoning-en.ts";
import { valueWords } from "./figure.ts";

/** A topic as a report needs it. */
export interface ReasonedTopic {
  readonly topic: Subject & { readonly title: string };
  readonly reasoning: Reasoning;
  /** What the person who ordered the report can be told under each classification; only what is known to be true. */
  readonly client: Readonly<Partial<Record<Classification, string>>>;
  /** Facts that computations answered. */
  readonly worked: readonly WorkedAnswer[];
  /** Facts that the inspection records. */
  readonly recorded: readonly RecordedAnswer[];
  /** What is known and says otherwise than what was stated; `stated` is null beside a limitation. */
  readonly against: readonly Otherwise[];
  /** Facts of which the things spoken of, or the sources, do not say the same. */
  readonly differing: readonly { readonly fact: string; readonly answers: readonly KnownAnswer[] }[];
  /** The layers between live metal and a person, where the topic asks what they rest on. */
  readonly between?: LayersDrawing;
  readonly remedies: readonly { readonly remedy: { readonly words: string }; readonly after: readonly Severity[] }[];
}

interface WorkedAnswer {
  readonly fact: string;
  readonly by: string;
  readonly value: string | null;
  readonly judgement: Judgement;
  readonly of?: readonly Path[];
}

interface RecordedAnswer {
  readonly fact: string;
  readonly property: string;
  /** The property as it is recorded, in words. */
  readonly words: string;
  readonly value: string;
  readonly leaf: FactGround;
  readonly of: readonly Path[];
}

type KnownAnswer = WorkedAnswer | RecordedAnswer;

type Otherwise = KnownAnswer & { readonly stated: string | null };

/** The reasoning of one observation of an inspection, with the inspector's choice. */
export interface ReasonedObservation extends ReasonedTopic {
  readonly observation: string;
  readonly chosen: Classification | null;
  readonly choice: keyof typeof REASONING.choice;
  /** What was done about danger before leaving. */
  readonly madeSafe?: string;
  /** The opening its figures describe; words are found for it here. */
  readonly opening?: Omit<ProbeDrawing, "words">;
  /** The cable it is about, with the layers that are gone, where its construction and what is left are recorded. */
  readonly cable?: CableDrawing;
}

/** A line of an argument: how deep it stands, its tag, and what it says. */
export interface ReasoningLine {
  readonly depth: number;
  readonly tag: string;
  readonly words: string;
}

export interface ReasoningPart {
  readonly heading: string;
  readonly lines: readonly ReasoningLine[];
}

/** Severities as a phrase. */
export function severityWords(severities: readonly Severity[]): string {
  return REASONING.list(
    severities.map((one) => SEVERITY_WORDS[one]),
    "or",
  );
}

/** What follows, in one line. */
export function headline({ reasoning }: ReasonedTopic): string {
  const { classification, ending, possible } = reasoning;
  switch (ending) {
    case "contradicted":
      return REASONING.contradicted(classification);
    case "open":
      return REASONING.possible(possible.map((one) => SEVERITY_WORDS[one]));
    case "no-danger":
      return REASONING.follows(REASONING.noDanger);
    case "not-ruled-out":
      return REASONING.follows(`FI, ${REASONING.fi}`);
    case "at-least":
      return REASONING.follows(REASONING.atLeast);
    case "settled":
      return REASONING.follows(settledWords(possible));
  }
}

function settledWords([only = "none"]: readonly Severity[]): string {
  return only === "none" ? SEVERITY_WORDS.none : `${only}, ${CLASSIFICATION[only]}`;
}

/**
 * What the person who ordered the report is told of an observation: by the inspector's choice where there is one, and
 * only what is known to be true. Where something was done about danger, that is told instead of what was there before.
 * Empty where there is nothing sure to say; then the inspector's own words stand alone.
 */
export function clientSentence(one: ReasonedTopic | ReasonedObservation): string {
  if ("madeSafe" in one && one.madeSafe !== undefined) return REASONING.doneAboutIt(one.madeSafe);
  const chosen = "chosen" in one ? one.chosen : null;
  const classification = chosen ?? one.reasoning.classification;
  return classification === null ? "" : (one.client[classification] ?? "");
}

/** The whole line of reasoning in parts, each a few lines. Parts with nothing to say are left out. */
export function reasoningParts(one: ReasonedTopic): readonly ReasoningPart[] {
  const parts: readonly ReasoningPart[] = [
    { heading: REASONING.cannotBe, lines: contradictionsOf(one) },
    { heading: REASONING.toSettle, lines: toSettle(one) },
    { heading: REASONING.argument, lines: argumentOf(one) },
    whyNotWorse(one),
    whyNotBetter(one),
    { heading: REASONING.changes, lines: changesOf(one) },
    { heading: REASONING.contested, lines: contestedOf(one) },
    { heading: REASONING.cannotSettle, lines: one.reasoning.unsettled.map((name) => factLine(name, one, 0)) },
    { heading: REASONING.next, lines: nextOf(one) },
    {
      heading: REASONING.remedies,
      lines: one.remedies.map(({ remedy, after }) =>
        plain(0, `${remedy.words} ${capital(REASONING.after(severityWords(after)))}.`),
      ),
    },
  ];
  return parts.filter(({ lines }) => lines.length > 0);
}

/** What cannot all be true, with the statements it is about and what taking one of them back would leave. */
function contradictionsOf(one: ReasonedTopic): readonly ReasoningLine[] {
  const { contradictions, withdrawals } = one.reasoning;
  return [
    ...contradictions.flatMap(({ contradiction, facts }) => [
      plain(0, capital(contradiction.words)),
      ...facts.map((name) => factLine(name, one, 1)),
    ]),
    ...withdrawals.map(({ facts, possible }) =>
      plain(
        0,
        REASONING.withdrawn(
          facts.map((name) => one.topic.facts[name]?.asks ?? name),
          severityWords(possible),
        ),
      ),
    ),
  ];
}

function argumentOf(one: ReasonedTopic): readonly ReasoningLine[] {
  const { paths, departures, possible } = one.reasoning;
  const lines: ReasoningLine[] = [];
  const said = new Set<string>();
  for (const { path, exists, layers, possible: severities } of paths) {
    // Within a route a fact is said once; the layers below it rest on the same.
    const inRoute = new Set<string>();
    const leaves = (names: readonly string[], depth: number, settled: boolean) =>
      names.flatMap((name) => {
        // What is settled rests on what is known; what is not known stands where it is open.
        if (inRoute.has(name) || (settled && !isKnown(name, one))) return [];
        inRoute.add(name);
        said.add(name);
        return [factLine(name, one, depth)];
      });
    if (exists.truth === "false") {
      lines.push(
        plain(0, `${REASONING.noRoute(path.route)} (${HAZARD[path.hazard]})`),
        ...leaves(exists.because, 1, true),
      );
      continue;
    }
    if (exists.truth === "open" && possible.length === 1) {
      // Whether it is there was not asked, since what stands between settles the same either way.
      lines.push(
        plain(0, `${REASONING.notNeeded(path.route)} (${HAZARD[path.hazard]})`),
        ...layers
          .filter(({ states, because }) => states.length === 1 && because.some((name) => isKnown(name, one)))
          .flatMap(({ layer, states, because }) => [layerLine(layer, states), ...leaves(because, 2, true)]),
      );
      continue;
    }
    const left = layers.map(({ states }) => states.map((state) => LAYER_STATES.indexOf(state)));
    const sum = (pick: (values: readonly number[]) => number) =>
      Math.min(
        2,
        left.reduce((total, values) => total + pick(values), 0),
      );
    const between = REASONING.layersLeft(
      sum((values) => Math.min(...values)),
      sum((values) => Math.max(...values)),
    );
    const opening = exists.truth === "open" ? REASONING.openRoute(path.route) : capital(path.route);
    lines.push(
      plain(0, `${opening} (${HAZARD[path.hazard]}): ${between} → ${severityWords(severities)}`),
      ...leaves(exists.because, 1, exists.truth === "true"),
      ...layers.flatMap(({ layer, states, because }) => [
        layerLine(layer, states),
        ...leaves(because, 2, states.length === 1),
      ]),
    );
  }
  lines.push(...dangersOf(one, said));
  const danger = possible.every((severity) => SEVERITIES.indexOf(severity) > SEVERITIES.indexOf("C3"));
  for (const { departure, holds } of departures) {
    const regulations = REASONING.regulations(departure.regulations);
    const because = holds.because.filter((name) => !said.has(name));
    if (holds.truth === "true" && danger)
      // Beside a danger, a departure is worth naming and settles nothing.
      lines.push(
        plain(0, `${REASONING.alsoDeparts(departure.words)}${regulations}`),
        ...because
          .filter((name) => name.startsWith("fact ") && isKnown(name, one))
          .map((name) => factLine(name, one, 1)),
      );
    else if (holds.truth === "true")
      lines.push(
        plain(
          0,
          `${REASONING.departs(departure.words)}${regulations} → ${possible.length === 1 ? "C3" : "C3 at the least"}`,
        ),
        ...because.map((name) => factLine(name, one, 1)),
      );
    else if (holds.truth === "open" && possible.length > 1 && !danger)
      lines.push(
        plain(0, `${REASONING.mayDepart(departure.words)}${regulations} → ${severityWords(["none", "C3"])}`),
        ...because.map((name) => factLine(name, one, 1)),
      );
  }
  lines.push(
    ...one.against.filter(({ stated }) => stated === null).map((other) => plain(0, otherwiseWords(other, one.topic))),
  );
  return lines;
}

/** What has to be settled before anything follows: statements against what is known, and answers that differ. */
function toSettle(one: ReasonedTopic): readonly ReasoningLine[] {
  return [
    ...one.against.filter(({ stated }) => stated !== null).map((other) => plain(0, otherwiseWords(other, one.topic))),
    ...one.differing.map(({ fact, answers }) => plain(0, differingWords(fact, answers, one.topic))),
  ];
}

/** What is known beside what an observation states otherwise, or beside its limitation. */
export function otherwiseWords(other: Otherwise, topic: Pick<Subject, "facts">): string {
  const { fact, value, stated } = other;
  const known = clauseOf(fact, value ?? "", topic);
  if (stated === null) return REASONING.beside(sourceOf(other), known);
  return REASONING.contradiction(sourceOf(other), known, clauseOf(fact, stated, topic));
}

/** Answers to one fact that cannot all be so, with what says each. */
export function differingWords(fact: string, answers: readonly KnownAnswer[], topic: Pick<Subject, "facts">): string {
  const said = new Map<string, Set<string>>();
  for (const answer of answers) {
    const clause = clauseOf(fact, answer.value ?? "", topic);
    said.set(clause, (said.get(clause) ?? new Set()).add(sourceOf(answer)));
  }
  return REASONING.differing([...said].map(([clause, sources]) => REASONING.says([...sources], clause)));
}

function sourceOf(known: KnownAnswer): string {
  return "property" in known ? REASONING.byFile(known.words) : REASONING.byCheck(known.by);
}

/** What is danger by itself and is so, or may be so where that could still change the answer. */
function dangersOf(one: ReasonedTopic, said: Set<string>): readonly ReasoningLine[] {
  const { dangers, possible } = one.reasoning;
  return dangers.flatMap(({ danger: { words, least, regulations }, holds }) => {
    // Where all that is possible is worse, it settles nothing.
    const settles = possible.some((severity) => SEVERITIES.indexOf(severity) <= SEVERITIES.indexOf(least));
    if (holds.truth === "false" || !settles || (holds.truth === "open" && possible.length === 1)) return [];
    const text = `${holds.truth === "true" ? capital(words) : words}${REASONING.regulations(regulations)}`;
    const because = holds.because.filter((name) => !said.has(name));
    for (const name of because) said.add(name);
    const line =
      holds.truth === "true"
        ? REASONING.byItself(text, REASONING.atTheLeast(least))
        : REASONING.perhapsByItself(text, REASONING.atTheLeast(least));
    return [plain(0, line), ...because.map((name) => factLine(name, one, 1))];
  });
}

function layerLine(
  { words, provision, regulations = [] }: Layer,
  states: Parameters<typeof REASONING.states>[0],
): ReasoningLine {
  return plain(
    1,
    `${capital(words)} (${[PROVISION[provision], ...regulations].join(", ")}): ${REASONING.states(states)}`,
  );
}

function isKnown(name: string, { reasoning }: ReasonedTopic): boolean {
  return (
    name.startsWith("point ") ||
    (reasoning.grounds.get(name.replace(/^fact /, ""))?.kind ?? "fact-not-known") !== "fact-not-known"
  );
}

/** Why the next worse classification does not follow: the layers that still hold on the routes that are there. */
function whyNotWorse(one: ReasonedTopic): ReasoningPart {
  const { classification, paths } = one.reasoning;
  const at = SEVERITIES.indexOf(classification as Severity);
  const worse = SEVERITIES[at + 1];
  if (at < 0 || worse === undefined || one.reasoning.ending !== "settled") return { heading: "", lines: [] };
  const holding = paths.flatMap(({ exists, layers, path }) => {
    const left = layers.filter(({ states }) => !states.includes("gone")).map(({ layer }) => layer.words);
    return exists.truth === "false" || left.length === 0 ? [] : [plain(0, REASONING.holds(capital(path.route), left))];
  });
  // Without a route there is nothing to say against a worse one where something is danger by itself.
  const isByItself = one.reasoning.dangers.some(({ holds }) => holds.truth === "true");
  const none = paths.length === 0 || isByItself ? [] : [plain(0, REASONING.noRouteAtAll)];
  const lines = worse === "C3" ? [plain(0, REASONING.noDeparture)] : holding.length > 0 ? holding : none;
  return { heading: REASONING.whyNotWorse(worse), lines };
}

/** Why the next better classification does not follow: the layers gone, or the departure that stays. */
function whyNotBetter(one: ReasonedTopic): ReasoningPart {
  const { classification, paths, departures, dangers } = one.reasoning;
  const at = SEVERITIES.indexOf(classification as Severity);
  const better = SEVERITIES[at - 1];
  if (at < 1 || better === undefined || one.reasoning.ending !== "settled") return { heading: "", lines: [] };
  const lines =
    at === 1
      ? departures
          .filter(({ holds }) => holds.truth === "true")
          .map(({ departure }) =>
            plain(0, `${capital(departure.words)}${REASONING.regulations(departure.regulations)}`),
          )
      : [
          ...paths
            .filter(({ possible }) => possible.length === 1 && possible[0] === SEVERITIES[at])
            .map(({ layers, path }) => {
              const gone = layers.filter(({ states }) => states.join() === "gone").map(({ layer }) => layer.words);
              return plain(
                0,
                gone.length === 0
                  ? REASONING.oneLayer(capital(path.route))
                  : REASONING.fails(capital(path.route), gone),
              );
            }),
          ...dangers
            .filter(({ danger, holds }) => holds.truth === "true" && danger.least === SEVERITIES[at])
            .map(({ danger }) => plain(0, REASONING.standsByItself(capital(danger.words)))),
        ];
  return { heading: REASONING.whyNotBetter(better === "none" ? SEVERITY_WORDS.none : better), lines };
}

/** Changes shown in a direction before the rest are only counted. */
const SHOWN_CHANGES = 5;

function changesOf(one: ReasonedTopic): readonly ReasoningLine[] {
  const { up, down } = one.reasoning.deciding;
  const directed = (changes: readonly Change[]) => {
    const sorted = [...changes].sort((a, b) => Object.keys(a.facts).length - Object.keys(b.facts).length);
    const lines = sorted.slice(0, SHOWN_CHANGES).map(({ facts, possible }) => {
      const clauses = Object.entries(facts).map(([name, value]) => clauseOf(name, value, one.topic));
      return plain(0, REASONING.change(severityWords(severitiesOf(possible)), clauses));
    });
    return sorted.length > SHOWN_CHANGES ? [...lines, plain(0, REASONING.more(sorted.length - SHOWN_CHANGES))] : lines;
  };
  return [...directed(down), ...directed(up)];
}

function contestedOf({ reasoning }: ReasonedTopic): readonly ReasoningLine[] {
  return reasoning.contested.flatMap(({ question, positions }) => [
    plain(0, question),
    ...positions.map(({ words, because, taken, possible }) => ({
      depth: 1,
      tag: severityWords(severitiesOf(possible)),
      words: `${words}, ${REASONING.because(because)}${taken ? ` – ${REASONING.taken}` : ""}`,
    })),
  ]);
}

function nextOf({ reasoning, topic }: ReasonedTopic): readonly ReasoningLine[] {
  const { next } = reasoning;
  const fact = next === undefined ? undefined : topic.facts[next.fact];
  if (next === undefined || fact === undefined) return [];
  return [
    plain(0, fact.asks),
    ...next.leaves.map(({ value, possible }) =>
      plain(1, REASONING.leaves(clauseOf(next.fact, value, topic), severityWords(severitiesOf(possible)))),
    ),
  ];
}

/** A fact or a position as a leaf of an argument; `name` is "fact NAME" or "point NAME", or a bare fact name. */
export function factLine(name: string, one: ReasonedTopic, depth: number): ReasoningLine {
  const { topic, reasoning, worked } = one;
  if (name.startsWith("point ")) {
    const point = name.slice(6);
    const about = topic.contested[point];
    const taken = about?.positions[reasoning.taken.get(point) ?? ""]?.words ?? "";
    return { depth, tag: REASONING.position, words: REASONING.held(about?.question ?? point, taken) };
  }
  const fact = name.startsWith("fact ") ? name.slice(5) : name;
  const ground = reasoning.grounds.get(fact);
  const asks = topic.facts[fact]?.asks ?? fact;
  if (ground === undefined) return { depth, tag: REASONING.notAsked, words: asks };
  const { tag, words } = groundWords(ground, asks);
  const isContradicted = one.against.some((other) => other.fact === fact && other.stated !== null);
  if (isContradicted) return { depth, tag: REASONING.stated, words: `${words}, ${REASONING.seeToSettle}` };
  const record = one.recorded.find((answer) => answer.fact === fact);
  if (record !== undefined) return { depth, tag, words: `${words}, ${REASONING.recordedAs(record.words)}` };
  const by = worked.find((answer) => answer.fact === fact)?.by;
  return by === undefined
    ? { depth, tag, words }
    : { depth, tag: REASONING.computed, words: `${words}, ${REASONING.workedBy(by)}` };
}

function groundWords(ground: FactGround, asks: string): { readonly tag: string; readonly words: string } {
  if (ground.kind === "fact") return { tag: REASONING[ground.how], words: ground.detail.text };
  if (ground.kind === "fact-not-known") {
    const { silence, reason } = ground.detail;
    return {
      tag: REASONING.notKnown,
      words: `${asks} (${[SILENCE[silence], reason].filter((part) => part !== "").join(": ")})`,
    };
  }
  return {
    tag: REASONING[ground.kind === "measured" ? "measured" : "seen"],
    words: `${ground.term.name} ${valueWords(ground as Evidence<Unit>)}`,
  };
}

/** What a value of a fact says, as a clause. */
export function clauseOf(name: string, value: string, { facts }: Pick<Subject, "facts">): string {
  const fact: FactOf | undefined = facts[name];
  if (fact === undefined) return `${name} ${value}`;
  if (fact.kind === "yes-no") return value === "yes" ? fact.yes : fact.no;
  if (fact.kind === "choice")
    return value
      .split(" | ")
      .map((one) => fact.values[one] ?? one)
      .join(", or ");
  return `${fact.name} is ${value}`;
}

function plain(depth: number, words: string): ReasoningLine {
  return { depth, tag: "", words };
}

function capital(text: string): string {
  return text.slice(0, 1).toUpperCase() + text.slice(1);
}
