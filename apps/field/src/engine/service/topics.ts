import { openingAccess } from "@good-grounds/computations";
import { type AnswerFault, CLASSIFICATIONS, type FactOf, severitiesOf, unitSymbol } from "@good-grounds/core";
import { kebab, type OpeningSection, positionsHeld, reasonAbout, type TopicReasoning } from "@good-grounds/judgement";
import {
  clauseOf,
  clientWords,
  differingWords,
  factLine,
  headline,
  otherwiseWords,
  probeDrawing,
  REASONING,
  reasoningParts,
  TOPIC_GROUP,
} from "@good-grounds/report";
import { OWN_TOPICS, type Topic, type Topics } from "@good-grounds/topics";
import { ENGINE } from "../../words/engine.ts";
import type {
  ChangeView,
  Facts,
  FactView,
  FigureView,
  Positions,
  ReasonView,
  TopicLabel,
  ValueView,
  Where,
} from "../reason-view.ts";
import type { Weighed } from "./desk.ts";

export function labels(topics: Topics = OWN_TOPICS, words?: string): readonly TopicLabel[] {
  return (words === undefined ? topics.all : topics.find(words)).map(labelOf);
}

function labelOf({ id, title, group }: Topic): TopicLabel {
  return { id, title, group, groupTitle: TOPIC_GROUP[group] };
}

export function reasonView(
  weighed: Weighed | undefined,
  topics: Topics | undefined,
  id: string,
  facts: Facts,
  own: Positions,
  place?: Where,
): ReasonView {
  const held = topics ?? OWN_TOPICS;
  const topic = held.byId(id);
  if (topic === undefined) throw new Error(ENGINE.noTopic(id));
  const positions = { ...positionsHeld(weighed?.installation, topic, held), ...own };
  const at = weighed === undefined || place === undefined ? {} : { at: { ...weighed, ...place } };
  const one = reasonAbout({ topic, said: facts, positions, ...at });
  return { ...viewOf(one), figures: figuresOf(topic, facts), section: sectionOf(one.opening) };
}

/** The figures that decide what a finger reaches through an opening, where the topic asks that. */
function figuresOf(topic: Topic, given: Facts): readonly FigureView[] {
  if (!Object.values(topic.facts).some(({ worked }) => worked?.by === openingAccess.id)) return [];
  return Object.entries(openingAccess.needs).map(([need, about]) => {
    const name = kebab(need);
    return {
      name,
      asks: capital("term" in about ? about.term.name : about.matter.name),
      values: about.kind === "word" ? about.words : about.kind === "yes-no" ? ["yes", "no"] : [],
      given: textOf(given[name]),
    };
  });
}

function textOf(given: Facts[string] | undefined): string {
  return typeof given === "string" ? given : "";
}

function capital(text: string): string {
  return text.slice(0, 1).toUpperCase() + text.slice(1);
}

function sectionOf(section: OpeningSection | undefined): string | undefined {
  if (section === undefined) return undefined;
  const words = REASONING.openingShows[section.verdict];
  return probeDrawing({ ...section, words });
}

function viewOf(one: TopicReasoning): Omit<ReasonView, "figures" | "section"> {
  const { topic, reasoning, worked, recorded, against, differing, remedies, faults } = one;
  const { next } = reasoning;
  const asked = next === undefined ? undefined : topic.facts[next.fact];
  const changes = (list: TopicReasoning["reasoning"]["deciding"]["up"]): readonly ChangeView[] =>
    list.map(({ facts, possible }) => ({
      clauses: Object.entries(facts).map(([name, value]) => clauseOf(name, value, topic)),
      possible: severitiesOf(possible),
    }));
  return {
    topic: labelOf(topic),
    headline: headline(one),
    possible: reasoning.possible,
    underAnyView: reasoning.underAnyView,
    classification: reasoning.classification,
    client: Object.fromEntries(
      CLASSIFICATIONS.map((under) => [under, clientWords(one, under)]).filter(([, words]) => words !== ""),
    ),
    parts: reasoningParts(one),
    ...(next === undefined || asked === undefined
      ? {}
      : {
          next: {
            ...factView(next.fact, asked, one),
            leaves: next.leaves.map(({ value, possible }) => ({
              value,
              words: clauseOf(next.fact, value, topic),
              possible: severitiesOf(possible),
            })),
          },
        }),
    facts: Object.entries(topic.facts).map(([name, fact]) => factView(name, fact, one)),
    contested: reasoning.contested.map(({ point, question, positions }) => ({
      point,
      question,
      positions: positions.map((position) => ({ ...position, possible: severitiesOf(position.possible) })),
    })),
    up: changes(reasoning.deciding.up),
    down: changes(reasoning.deciding.down),
    worked: worked.map(({ fact, by, value }) => ({ fact, by, words: clauseOf(fact, value ?? "", topic) })),
    recorded: recorded.map(({ fact, words, value }) => ({ fact, by: words, words: clauseOf(fact, value, topic) })),
    against: [
      ...against.map((other) => ({ fact: other.fact, words: otherwiseWords(other, topic) })),
      ...differing.map(({ fact, answers }) => ({ fact, words: differingWords(fact, answers, topic) })),
    ],
    remedies: remedies.map(({ remedy, after }) => ({ words: remedy.words, after })),
    regulations: regulationsOf(one),
    faults: faults.map((fault) => ({ name: fault.name, words: faultWords(fault) })),
  };
}

function factView(name: string, fact: FactOf, one: TopicReasoning): FactView {
  const ground = one.reasoning.grounds.get(name);
  const { tag, words } = factLine(name, one, 0);
  return {
    fact: name,
    asks: fact.asks,
    kind: fact.kind,
    values: valuesOf(fact),
    ...(fact.kind === "quantity" ? { unit: unitSymbol(fact) } : {}),
    effort: fact.effort,
    open: one.reasoning.open.includes(name),
    ...(ground === undefined ? {} : { known: { tag, words } }),
  };
}

function valuesOf(fact: FactOf): readonly ValueView[] {
  if (fact.kind === "quantity") return [];
  const values = fact.kind === "yes-no" ? { yes: fact.yes, no: fact.no } : fact.values;
  return Object.entries(values).map(([value, words]) => ({ value, words }));
}

/** Regulations of the departures and dangers that hold or may, and of the layers on routes that are there or may be. */
function regulationsOf({ reasoning }: TopicReasoning): readonly string[] {
  const departures = reasoning.departures.filter(({ holds }) => holds.truth !== "false");
  const dangers = reasoning.dangers.filter(({ holds }) => holds.truth !== "false");
  const layers = reasoning.paths.filter(({ exists }) => exists.truth !== "false").flatMap((path) => path.layers);
  return [
    ...new Set([
      ...dangers.flatMap(({ danger }) => danger.regulations),
      ...departures.flatMap(({ departure }) => departure.regulations),
      ...layers.flatMap(({ layer }) => layer.regulations ?? []),
    ]),
  ];
}

function faultWords({ code, found, expected }: AnswerFault): string {
  return code === "not-a-quantity" || code === "backwards"
    ? ENGINE.notAQuantity(found, expected)
    : ENGINE.notAnAnswer(found, expected);
}
