import type { Change, Classification } from "@good-grounds/core";
import { SEVERITIES, type Severity, severitiesOf } from "@good-grounds/core";
import { CLASSIFICATION } from "../locales/labels.ts";
import { REASONING, SEVERITY_WORDS } from "../locales/reasoning-en.ts";
import type { ReasonedObservation, ReasonedTopic, ReasoningLine } from "./reasoned-topic.ts";
import { otherwiseWords, toSettle } from "./reasoning-known.ts";
import { capital, clauseOf, factLine, isKnown, plain, severityWords } from "./reasoning-lines.ts";
import { routeLines } from "./reasoning-routes.ts";

export type { ReasonedObservation, ReasonedTopic, ReasoningLine } from "./reasoned-topic.ts";
export { clauseOf, factLine, severityWords } from "./reasoning-lines.ts";

export interface ReasoningPart {
  readonly heading: string;
  readonly lines: readonly ReasoningLine[];
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
  return classification === null ? "" : clientWords(one, classification);
}

/** As many things as one sentence tells to have stayed open. */
const MOST_OPEN = 3;

/** What is told under a classification; under FI with what could not be found out. Empty where nothing sure can be said. */
export function clientWords({ client, notFoundOut }: ReasonedTopic, classification: Classification): string {
  const said = client[classification] ?? "";
  if (classification !== "FI" || said === "" || notFoundOut.length === 0) return said;
  const open = notFoundOut.slice(0, MOST_OPEN);
  return `${said} ${REASONING.couldNotFindOut(open)} ${REASONING.mustBeLookedAt}`;
}

/** The whole line of reasoning in parts, each a few lines. Parts with nothing to say are left out. */
export function reasoningParts(one: ReasonedTopic): readonly ReasoningPart[] {
  const parts: readonly ReasoningPart[] = [
    { heading: REASONING.cannotBe, lines: contradictionsOf(one) },
    { heading: REASONING.toSettle, lines: toSettle(one) },
    {
      heading: REASONING.unfinished,
      lines: (one.unfinished ?? []).map(({ fact, by, lacks }) =>
        plain(0, REASONING.lacks(one.topic.facts[fact]?.asks ?? fact, by, lacks)),
      ),
    },
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
  const said = new Set<string>();
  return [
    ...routeLines(one, said),
    ...dangersOf(one, said),
    ...departuresOf(one, said),
    ...one.against.filter(({ stated }) => stated === null).map((other) => plain(0, otherwiseWords(other, one.topic))),
  ];
}

/** Ways of falling short of the edition, where they settle something or are worth naming beside a danger. */
function departuresOf(one: ReasonedTopic, said: ReadonlySet<string>): readonly ReasoningLine[] {
  const { departures, possible } = one.reasoning;
  const danger = possible.every((severity) => SEVERITIES.indexOf(severity) > SEVERITIES.indexOf("C3"));
  return departures.flatMap(({ departure, holds }) => {
    const regulations = REASONING.regulations(departure.regulations);
    const because = holds.because.filter((name) => !said.has(name));
    const leaves = (names: readonly string[]) => names.map((name) => factLine(name, one, 1));
    if (holds.truth === "true" && danger)
      // Beside a danger, a departure is worth naming and settles nothing.
      return [
        plain(0, `${REASONING.alsoDeparts(departure.words)}${regulations}`),
        ...leaves(because.filter((name) => name.startsWith("fact ") && isKnown(name, one))),
      ];
    if (holds.truth === "true")
      return [
        plain(
          0,
          `${REASONING.departs(departure.words)}${regulations} → ${possible.length === 1 ? "C3" : "C3 at the least"}`,
        ),
        ...leaves(because),
      ];
    if (holds.truth === "open" && possible.length > 1 && !danger)
      return [
        plain(0, `${REASONING.mayDepart(departure.words)}${regulations} → ${severityWords(["none", "C3"])}`),
        ...leaves(because),
      ];
    return [];
  });
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
