import type { Change, FactGround } from "@good-grounds/core";
import { pointer, severitiesOf } from "@good-grounds/core";
import type { ReasonedObservation, ReasonedTopic } from "@good-grounds/report";
import { clientSentence, differingWords, otherwiseWords } from "@good-grounds/report";

/** Name and version of the JSON output of a line of reasoning. */
const OUTPUT = Object.freeze({ format: "good-grounds-reasoning", version: 2 });

/** A line of reasoning as plain data. */
export function reasoningJson(one: ReasonedTopic): object {
  const { topic, reasoning, worked, recorded, against, differing, remedies } = one;
  const { possible, underAnyView, classification, ending, unsettled, open, next, deciding, contested } = reasoning;
  return {
    ...OUTPUT,
    topic: topic.id,
    title: topic.title,
    possible,
    underAnyView,
    classification,
    ending,
    open,
    unsettled,
    next:
      next === undefined
        ? null
        : {
            fact: next.fact,
            asks: topic.facts[next.fact]?.asks ?? next.fact,
            answers: next.leaves.map((leaf) => ({ value: leaf.value, possible: severitiesOf(leaf.possible) })),
          },
    deciding: { up: deciding.up.map(changeJson), down: deciding.down.map(changeJson) },
    contested: contested.map(({ point, question, positions }) => ({
      point,
      question,
      positions: positions.map(({ position, words, because, taken, possible: leaves }) => ({
        position,
        words,
        because,
        taken,
        possible: severitiesOf(leaves),
      })),
    })),
    ...argumentJson(reasoning),
    facts: Object.fromEntries([...reasoning.grounds].map(([name, ground]) => [name, groundJson(ground)])),
    worked: worked.map(knownJson),
    ...(one.unfinished === undefined ? {} : { unfinished: one.unfinished }),
    recorded: recorded.map(knownJson),
    against: against.map((other) => ({
      ...knownJson(other),
      stated: other.stated,
      ...(other.askedBy === undefined ? {} : { askedBy: other.askedBy }),
      words: otherwiseWords(other, topic),
    })),
    differing: differing.map(({ fact, answers }) => ({
      fact,
      answers: answers.map(knownJson),
      words: differingWords(fact, answers, topic),
    })),
    remedies: remedies.map(({ remedy, after }) => ({ words: remedy.words, after })),
    client: clientSentence(one),
  };
}

/** The reasoning of an observation, with the inspector's choice. */
export function observationJson(one: ReasonedObservation): object {
  return { observation: one.observation, chosen: one.chosen, choice: one.choice, ...reasoningJson(one) };
}

/** The routes to harm with their layers, what is short of the edition, and what is danger by itself. */
function argumentJson({ paths, departures, dangers, contradictions, withdrawals }: ReasonedTopic["reasoning"]): object {
  return {
    paths: paths.map(({ path, exists, layers, possible: severities }) => ({
      id: path.id,
      hazard: path.hazard,
      route: path.route,
      exists: exists.truth,
      because: exists.because,
      possible: severities,
      layers: layers.map(({ layer, states, because }) => ({
        id: layer.id,
        provision: layer.provision,
        words: layer.words,
        regulations: layer.regulations ?? [],
        states,
        because,
      })),
    })),
    departures: departures.map(({ departure, holds }) => ({
      words: departure.words,
      regulations: departure.regulations,
      holds: holds.truth,
      because: holds.because,
    })),
    dangers: dangers.map(({ danger, holds }) => ({
      id: danger.id,
      least: danger.least,
      words: danger.words,
      regulations: danger.regulations,
      holds: holds.truth,
      because: holds.because,
    })),
    contradictions: contradictions.map(({ contradiction, facts }) => ({ words: contradiction.words, facts })),
    withdrawals,
  };
}

type Known = ReasonedTopic["worked"][number] | ReasonedTopic["recorded"][number];

/** Something known of a fact: the check or the property of the file, and the places in the file it is about. */
function knownJson(known: Known): object {
  const { fact, value, of } = known;
  const about = of === undefined ? {} : { of: of.map(pointer) };
  return "property" in known
    ? { fact, property: known.property, recorded: known.words, value, ...about }
    : { fact, by: known.by, value, ...about };
}

function changeJson({ facts, possible }: Change): object {
  return { facts, possible: severitiesOf(possible) };
}

function groundJson(ground: FactGround): object {
  switch (ground.kind) {
    case "fact":
      return { kind: ground.how, word: ground.word, words: ground.detail.text };
    case "fact-not-known":
      return { kind: "not-known", silence: ground.detail.silence, reason: ground.detail.reason };
    case "seen":
    case "measured":
      return { kind: ground.kind, text: ground.detail.text, low: finite(ground.low), high: finite(ground.high) };
    default:
      return { kind: ground.kind };
  }
}

function finite(value: number): number | "unbounded" {
  return Number.isFinite(value) ? value : "unbounded";
}
