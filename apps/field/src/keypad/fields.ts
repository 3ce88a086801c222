import type { Record as JobRecord } from "../record/record.ts";
import type { KindId } from "./kinds.ts";
import { type Spot, spotId, valueAt } from "./spot.ts";

/** A finding that is about a field: the place it is found at, and the check. */
export interface About {
  readonly place: string;
  readonly check: string;
}

interface FieldBase {
  readonly spot: Spot;
  /** Its symbol or short name: "R1+R2". */
  readonly label: string;
  readonly hint?: string;
  /** Findings shown beside it, the one that matters most first. */
  readonly about?: readonly About[];
  /** Passed over when the next field is sought, unless somebody goes there. */
  readonly optional?: true;
  /** There to go on with, and asked of nobody who comes here: one more point of a ring that has some. */
  readonly offered?: true;
}

/** A field for a reading. */
export interface ReadingField extends FieldBase {
  readonly kind: KindId;
  /** What other readings lead to expect, in the coherent unit. */
  readonly expected?: number;
  /** Written with the first reading: what makes a new member of a list of it. */
  readonly with?: readonly (readonly [string, string | number | boolean])[];
  /** Where the name of the ring's point is, where the field is one. */
  readonly pointPath?: string;
  /** The function whose usual values it is held against, where they are not those of its own. */
  readonly usualOf?: KindId;
  /** What it usually lies between, in the coherent unit, where that is not what its function usually shows. */
  readonly usual?: readonly [low: number, high: number];
}

/** A field for one of a few words. */
export interface WordField extends FieldBase {
  readonly words: Readonly<Record<string, string>>;
}

export type AnyField = ReadingField | WordField;

/** Fields that belong together under a heading. */
export interface FieldGroup {
  readonly title: string;
  readonly help?: string;
  /** Fields of live tests of this circuit, which wait for continuity. */
  readonly liveOf?: string;
  /** Shown shut, and passed over. */
  readonly folded?: true;
  readonly fields: readonly AnyField[];
}

export function isReading(field: AnyField): field is ReadingField {
  return "kind" in field;
}

/** The id of the control of a field. */
export function idOf({ spot }: AnyField): string {
  return `at:${spotId(spot)}`;
}

/** The field that comes after one: the next that has no value and needs one. Undefined at the end. */
export function fieldAfter(record: JobRecord, groups: readonly FieldGroup[], current: AnyField): AnyField | undefined {
  const open = inOrder(groups);
  const at = open.findIndex((field) => idOf(field) === idOf(current));
  return open.slice(at + 1).find((field) => field.optional !== true && valueAt(record, field.spot) === undefined);
}

/** The first field that has no value and needs one. Undefined where nothing is left to take. */
export function fieldToStart(record: JobRecord, groups: readonly FieldGroup[]): AnyField | undefined {
  return inOrder(groups).find(
    (field) => field.optional !== true && field.offered !== true && valueAt(record, field.spot) === undefined,
  );
}

/** The field before one, in the order of the tests. */
export function fieldBefore(groups: readonly FieldGroup[], current: AnyField): AnyField | undefined {
  const open = inOrder(groups);
  return open[open.findIndex((field) => idOf(field) === idOf(current)) - 1];
}

function inOrder(groups: readonly FieldGroup[]): readonly AnyField[] {
  return groups.filter(({ folded }) => folded !== true).flatMap(({ fields }) => fields);
}
