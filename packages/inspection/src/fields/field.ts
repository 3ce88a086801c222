import type { InstrumentRange, Matter, Path, Term } from "@good-grounds/core";
import type * as z from "zod";
import type { Leaves } from "./leaves.ts";

/** What a field holds: a reading off an instrument, a quantity stated, one or several of a few words, yes or no, a number. */
export type FieldKind = "reading" | "quantity" | "word" | "words" | "yes-no" | "count" | "points";

/** How a field is called and explained to the person who fills it in. */
export interface Said {
  /** As an electrician says it on site: "R1+R2". */
  readonly label: string;
  /** Beside the label, where that is short: "furthest point". */
  readonly help?: string;
  /** The unit it is usually written in, where that is not the coherent one: "mm". */
  readonly symbol?: string;
  /** What it means in messages about the file and in the published schema; the term's own words where left out. */
  readonly meaning?: string;
  /** What a sound or a faulty one may lie between, in the coherent unit; the app asks about anything else. */
  readonly usual?: readonly [low: number, high: number];
}

/**
 * The one description of a member of the inspection file that is evidence. The schema of the file, the leaf of the resolved
 * installation, and labels of app and report are all made of it.
 */
export interface Field<S extends z.ZodType = z.ZodType, R = unknown> extends Said {
  readonly kind: FieldKind;
  /** The quantity or the fact it is, by the name the glossary has for it. */
  readonly about: Term | Matter;
  /** Labels of the words, where it is one or several of a few. */
  readonly words?: Readonly<Record<string, string>>;
  /** Which function of an instrument reads it; its accuracy makes the band. */
  readonly range?: InstrumentRange;
  /** The most that can be counted. */
  readonly most?: number;
  /** The evidence leaf of what stands at a place. Nothing recorded is a leaf that is not known. */
  leaf(leaves: Leaves, entry: z.output<S> | undefined, path: Path): R;
}

/** Fields of one thing, by the name of the member that holds each. */
export type FieldSet = Readonly<Record<string, Field>>;

/** What is recorded of a set of fields. */
export type EntryOf<F extends FieldSet> = { readonly [K in keyof F]?: Parameters<F[K]["leaf"]>[1] };

/** The evidence leaves of a set of fields: each is there, known or not. */
export type LeavesOf<F extends FieldSet> = { readonly [K in keyof F]: ReturnType<F[K]["leaf"]> };

const LISTED = new WeakMap<FieldSet, readonly (readonly [string, Field])[]>();

/** The fields of a set by name, listed once: every reading of every file is made through them. */
function fieldsIn(fields: FieldSet): readonly (readonly [string, Field])[] {
  const listed = LISTED.get(fields) ?? Object.entries(fields);
  LISTED.set(fields, listed);
  return listed;
}

/** The leaves of what was recorded at a place; of nothing at all where there is no entry. */
export function leavesOf<F extends FieldSet>(
  fields: F,
  leaves: Leaves,
  entry: EntryOf<F> | undefined,
  path: Path,
): LeavesOf<F> {
  const found: Record<string, unknown> = {};
  for (const [name, field] of fieldsIn(fields)) found[name] = field.leaf(leaves, entry?.[name], [...path, name]);
  return found as LeavesOf<F>;
}
