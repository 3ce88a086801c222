import type { Evidence, Fact, FactGround, Path, Unit } from "@good-grounds/core";
import { isKnown, isKnownFact } from "@good-grounds/core";
import type { SpokenOf } from "../spoken-of/index.ts";

/** A property of one thing as the inspection records it. */
export interface Recording {
  /** The place in the file of the thing it is a property of. */
  readonly of: Path;
  readonly leaf: FactGround;
  /** Values that remain possible, of those the property can have; none where it is not known or is a quantity alone. */
  readonly values: readonly string[];
}

/**
 * A property that an inspection records and that answers facts of topics. It reads from the resolved installation and
 * from what the observation speaks of, one recording for each thing it may mean; none where it speaks of no such thing.
 */
export interface RecordedProperty {
  readonly id: string;
  /** What it is, in words: "system earthing". */
  readonly name: string;
  /** The values it can have; none where it is a quantity alone. */
  readonly values: readonly string[];
  /** The unit where it is a quantity. */
  readonly unit?: Unit;
  readonly read: (spoken: SpokenOf) => readonly Recording[];
}

/** A leaf of a thing at its place. */
export type Leaf<T> = readonly [of: Path, leaf: T];

/** A property that is one of a few words. Values are the words in kebab case. */
export function worded(
  id: string,
  name: string,
  words: readonly string[],
  read: (spoken: SpokenOf) => readonly Leaf<Fact<string | boolean>>[],
): RecordedProperty {
  return Object.freeze({
    id,
    name,
    values: words.map(inKebab),
    read: (spoken: SpokenOf) =>
      read(spoken).map(([of, leaf]) => ({ of, leaf, values: isKnownFact(leaf) ? [inKebab(leaf.word)] : [] })),
  });
}

/** A property that is so or not. */
export function stated(
  id: string,
  name: string,
  read: (spoken: SpokenOf) => readonly Leaf<Fact<boolean>>[],
): RecordedProperty {
  return worded(id, name, ["yes", "no"], read);
}

/** A class of a quantity: all that are at most `upTo`, in the quantity's unit, and in no class before it. */
export interface Class {
  readonly value: string;
  readonly upTo: number;
}

/** A property that is a quantity; with classes where words of it answer facts. The last class has no end. */
export function quantity<U extends Unit>(
  id: string,
  name: string,
  unit: U,
  read: (spoken: SpokenOf) => readonly Leaf<Evidence<U>>[],
  classes: readonly Class[] = [],
): RecordedProperty {
  return Object.freeze({
    id,
    name,
    unit,
    values: classes.map(({ value }) => value),
    read: (spoken: SpokenOf) =>
      read(spoken).map(([of, leaf]) => ({ of, leaf, values: isKnown(leaf) ? classesOf(leaf, classes) : [] })),
  });
}

/** Relative slack within which a value as typed counts as the limit of a class. */
const SLACK = 1e-9;

/** The classes that the band of a quantity touches. */
function classesOf({ low, high }: Evidence<Unit>, classes: readonly Class[]): readonly string[] {
  const reaches = (value: number) => classes.findIndex(({ upTo }) => value <= upTo * (1 + SLACK));
  const [from, to] = [reaches(low), reaches(high)];
  return from < 0 || to < 0 ? [] : classes.slice(from, to + 1).map(({ value }) => value);
}

/** A word of the vocabulary as the value of a property: "TN-C-S" is "tn-c-s", "BS EN 60898" is "bs-en-60898". */
function inKebab(word: string | boolean): string {
  if (typeof word === "boolean") return word ? "yes" : "no";
  return word.toLowerCase().replaceAll(/[^a-z0-9]+/g, "-");
}
