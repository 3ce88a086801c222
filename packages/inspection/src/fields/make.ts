import {
  type Evidence,
  type Fact,
  fact,
  factNotKnown,
  type InstrumentRange,
  type Matter,
  TERM,
  type Term,
  type Unit,
} from "@good-grounds/core";
import type {
  CountSchema,
  PointsSchema,
  QuantitySchema,
  ReadingSchema,
  WordSchema,
  Words,
  WordsSchema,
  YesNoSchema,
} from "../schema/field-schema.ts";
import type { Field, Said } from "./field.ts";

/** A reading of one point of a ring. */
export interface RingPoint {
  readonly point: string;
  readonly reading: Evidence<"ohm">;
}

/** What an instrument showed. */
export function readingField<U extends Unit>(
  term: Term<U>,
  range: InstrumentRange,
  said: Said,
): Field<ReadingSchema, Evidence<U>> {
  return Object.freeze({
    ...said,
    kind: "reading",
    about: term,
    range,
    leaf: (leaves, entry, path) => leaves.reading(term, entry, range, path),
  } satisfies Field<ReadingSchema, Evidence<U>>);
}

/** A quantity as stated, seen or marked: a value, a range, or not known and why. */
export function quantityField<U extends Unit>(term: Term<U>, said: Said): Field<QuantitySchema, Evidence<U>> {
  return Object.freeze({
    ...said,
    kind: "quantity",
    about: term,
    leaf: (leaves, entry, path) => leaves.quantity(term, entry, path),
  } satisfies Field<QuantitySchema, Evidence<U>>);
}

/** One of a few words. */
export function wordField<const W extends Words>(
  matter: Matter,
  words: W,
  said: Said,
  labels: { readonly [K in W[number]]?: string } = {},
): Field<WordSchema<W>, Fact<W[number]>> {
  return Object.freeze({
    ...said,
    kind: "word",
    about: matter,
    words: labelsOf(words, labels),
    leaf: (leaves, entry, path) =>
      leaves.fact<W[number] | Silent | undefined>(matter, entry as W[number], path) as Fact<W[number]>,
  } satisfies Field<WordSchema<W>, Fact<W[number]>>);
}

/** Several of a few words, each a fact of its own; a single one that is not known where nothing was recorded. */
export function wordsField<const W extends Words>(
  matter: Matter,
  words: W,
  said: Said,
  labels: { readonly [K in W[number]]?: string } = {},
): Field<WordsSchema<W>, readonly Fact<W[number]>[]> {
  return Object.freeze({
    ...said,
    kind: "words",
    about: matter,
    words: labelsOf(words, labels),
    leaf: (_, entry, path) => {
      const said = entry as readonly W[number][] | Silent | undefined;
      if (said === undefined) return Object.freeze([factNotKnown(matter, path)]);
      if ("notKnown" in said) return Object.freeze([factNotKnown(matter, path, said.notKnown, said.reason)]);
      return Object.freeze(said.map((word, i) => fact<W[number]>(matter, word, [...path, i])));
    },
  } satisfies Field<WordsSchema<W>, readonly Fact<W[number]>[]>);
}

/** Yes or no. */
export function yesNoField(matter: Matter, said: Said): Field<YesNoSchema, Fact<boolean>> {
  return Object.freeze({
    ...said,
    kind: "yes-no",
    about: matter,
    leaf: (leaves, entry, path) => leaves.fact(matter, entry, path),
  } satisfies Field<YesNoSchema, Fact<boolean>>);
}

/** A number of things that were counted. */
export function countField(most: number, said: Said): Field<CountSchema, Evidence<"ratio">> {
  return Object.freeze({
    ...said,
    kind: "count",
    about: TERM.count,
    most,
    leaf: (leaves, entry, path) => leaves.quantity(TERM.count, typeof entry === "number" ? String(entry) : entry, path),
  } satisfies Field<CountSchema, Evidence<"ratio">>);
}

/** Readings at the points of a cross-connected ring, in the order they were taken. */
export function pointsField(
  term: Term<"ohm">,
  range: InstrumentRange,
  said: Said,
): Field<PointsSchema, readonly RingPoint[]> {
  return Object.freeze({
    ...said,
    kind: "points",
    about: term,
    range,
    leaf: (leaves, entry, path) =>
      Object.freeze(
        (entry ?? []).map(({ point, reading: shown }, i) => ({
          point,
          reading: leaves.reading(term, shown, range, [...path, i, "reading"]),
        })),
      ),
  } satisfies Field<PointsSchema, readonly RingPoint[]>);
}

type Silent = { readonly notKnown: "limited" | "not-verified" | "not-applicable"; readonly reason: string };

function labelsOf(
  words: Words,
  labels: Readonly<Record<string, string | undefined>>,
): Readonly<Record<string, string>> {
  return Object.freeze(Object.fromEntries(words.map((word) => [word, labels[word] ?? word.replaceAll("-", " ")])));
}
