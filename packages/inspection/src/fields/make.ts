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
import * as z from "zod";
import { line, reading, stated, statedQuantity } from "../schema/common.ts";
import type { Field, Said } from "./field.ts";

type Words = readonly [string, ...string[]];
type Reading = ReturnType<typeof reading>;
type Quantity = ReturnType<typeof statedQuantity>;

function wordSchema<const W extends Words>(words: W) {
  return stated(z.enum(words));
}
function wordsSchema<const W extends Words>(words: W) {
  return stated(z.array(z.enum(words)).min(1).max(words.length));
}
function yesNoSchema() {
  return stated(z.boolean());
}
function countSchema(most: number) {
  return stated(z.int().min(0).max(most));
}
function pointsSchema(unit: Unit, meaning: string) {
  return z.array(z.strictObject({ point: line, reading: reading(unit, meaning) })).max(200);
}

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
): Field<Reading, Evidence<U>> {
  return Object.freeze({
    ...said,
    kind: "reading",
    about: term,
    range,
    schema: reading(term.unit, said.meaning ?? term.name),
    leaf: (leaves, entry, path) => leaves.reading(term, entry, range, path),
  } satisfies Field<Reading, Evidence<U>>);
}

/** A quantity as stated, seen or marked: a value, a range, or not known and why. */
export function quantityField<U extends Unit>(term: Term<U>, said: Said): Field<Quantity, Evidence<U>> {
  return Object.freeze({
    ...said,
    kind: "quantity",
    about: term,
    schema: statedQuantity(term.unit, said.meaning ?? term.name),
    leaf: (leaves, entry, path) => leaves.quantity(term, entry, path),
  } satisfies Field<Quantity, Evidence<U>>);
}

/** One of a few words. */
export function wordField<const W extends Words>(
  matter: Matter,
  words: W,
  said: Said,
  labels: { readonly [K in W[number]]?: string } = {},
): Field<ReturnType<typeof wordSchema<W>>, Fact<W[number]>> {
  return Object.freeze({
    ...said,
    kind: "word",
    about: matter,
    words: labelsOf(words, labels),
    schema: wordSchema(words),
    leaf: (leaves, entry, path) =>
      leaves.fact<W[number] | Silent | undefined>(matter, entry as W[number], path) as Fact<W[number]>,
  } satisfies Field<ReturnType<typeof wordSchema<W>>, Fact<W[number]>>);
}

/** Several of a few words, each a fact of its own; a single one that is not known where nothing was recorded. */
export function wordsField<const W extends Words>(
  matter: Matter,
  words: W,
  said: Said,
  labels: { readonly [K in W[number]]?: string } = {},
): Field<ReturnType<typeof wordsSchema<W>>, readonly Fact<W[number]>[]> {
  return Object.freeze({
    ...said,
    kind: "words",
    about: matter,
    words: labelsOf(words, labels),
    schema: wordsSchema(words),
    leaf: (_, entry, path) => {
      const said = entry as readonly W[number][] | Silent | undefined;
      if (said === undefined) return Object.freeze([factNotKnown(matter, path)]);
      if ("notKnown" in said) return Object.freeze([factNotKnown(matter, path, said.notKnown, said.reason)]);
      return Object.freeze(said.map((word, i) => fact<W[number]>(matter, word, [...path, i])));
    },
  } satisfies Field<ReturnType<typeof wordsSchema<W>>, readonly Fact<W[number]>[]>);
}

/** Yes or no. */
export function yesNoField(matter: Matter, said: Said): Field<ReturnType<typeof yesNoSchema>, Fact<boolean>> {
  return Object.freeze({
    ...said,
    kind: "yes-no",
    about: matter,
    schema: yesNoSchema(),
    leaf: (leaves, entry, path) => leaves.fact(matter, entry, path),
  } satisfies Field<ReturnType<typeof yesNoSchema>, Fact<boolean>>);
}

/** A number of things that were counted. */
export function countField(most: number, said: Said): Field<ReturnType<typeof countSchema>, Evidence<"ratio">> {
  return Object.freeze({
    ...said,
    kind: "count",
    about: TERM.count,
    schema: countSchema(most),
    leaf: (leaves, entry, path) => leaves.quantity(TERM.count, typeof entry === "number" ? String(entry) : entry, path),
  } satisfies Field<ReturnType<typeof countSchema>, Evidence<"ratio">>);
}

/** Readings at the points of a cross-connected ring, in the order they were taken. */
export function pointsField(
  term: Term<"ohm">,
  range: InstrumentRange,
  said: Said,
): Field<ReturnType<typeof pointsSchema>, readonly RingPoint[]> {
  return Object.freeze({
    ...said,
    kind: "points",
    about: term,
    range,
    schema: pointsSchema(term.unit, said.meaning ?? term.name),
    leaf: (leaves, entry, path) =>
      Object.freeze(
        (entry ?? []).map(({ point, reading: shown }, i) => ({
          point,
          reading: leaves.reading(term, shown, range, [...path, i, "reading"]),
        })),
      ),
  } satisfies Field<ReturnType<typeof pointsSchema>, readonly RingPoint[]>);
}

type Silent = { readonly notKnown: "limited" | "not-verified" | "not-applicable"; readonly reason: string };

function labelsOf(
  words: Words,
  labels: Readonly<Record<string, string | undefined>>,
): Readonly<Record<string, string>> {
  return Object.freeze(Object.fromEntries(words.map((word) => [word, labels[word] ?? word.replaceAll("-", " ")])));
}
