import type { Matter, Term } from "@good-grounds/core";
import * as z from "zod";
import type { Field, FieldSet } from "../fields/field.ts";
import { line, reading, stated, statedQuantity } from "./common.ts";

export type Words = readonly [string, ...string[]];
export type ReadingSchema = ReturnType<typeof reading>;
export type QuantitySchema = ReturnType<typeof statedQuantity>;
export type WordSchema<W extends Words> = ReturnType<typeof wordSchema<W>>;
export type WordsSchema<W extends Words> = ReturnType<typeof wordsSchema<W>>;
export type YesNoSchema = ReturnType<typeof yesNoSchema>;
export type CountSchema = ReturnType<typeof countSchema>;
export type PointsSchema = ReturnType<typeof pointsSchema>;

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
function pointsSchema(term: Term, meaning: string) {
  return z.array(z.strictObject({ point: line, reading: reading(term.unit, meaning) })).max(200);
}

/** Members of a strict object for a set of fields: every one may be left out. */
export type ShapeOf<F extends FieldSet> = { [K in keyof F]: z.ZodOptional<SchemaOf<F[K]>> };

/** The schema of what stands at a field. */
type SchemaOf<F> = F extends Field<infer S, unknown> ? S : never;

/** The shape of a set of fields, made of their descriptions: fields know nothing of schemas, so that judging needs none. */
export function shapeOf<F extends FieldSet>(fields: F): ShapeOf<F> {
  return Object.fromEntries(
    Object.entries(fields).map(([name, field]) => [name, schemaOf(field).optional()]),
  ) as ShapeOf<F>;
}

function schemaOf({ kind, about, words, most, meaning }: Field): z.ZodType {
  const listed = Object.keys(words ?? {}) as unknown as Words;
  switch (kind) {
    case "word":
      return wordSchema(listed);
    case "words":
      return wordsSchema(listed);
    case "yes-no":
      return yesNoSchema();
    case "count":
      return countSchema(most ?? 0);
    case "reading":
      return reading(quantityOf(about).unit, meaning ?? quantityOf(about).name);
    case "quantity":
      return statedQuantity(quantityOf(about).unit, meaning ?? quantityOf(about).name);
    case "points":
      return pointsSchema(quantityOf(about), meaning ?? quantityOf(about).name);
  }
}

function quantityOf(about: Term | Matter): Term {
  if ("unit" in about) return about;
  throw new Error(`${about.id} is a fact, where a quantity was expected`);
}
