import type { Record as JobRecord } from "../record/record.ts";
import type { KindId } from "./kinds.ts";
import { type Spot, valueAt } from "./spot.ts";

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
}

/** A field for a reading. */
export interface ReadingField extends FieldBase {
  readonly kind: KindId;
  /** What other readings lead to expect, in the coherent unit. */
  readonly expected?: number;
  /** Written with the first reading: what makes a new member of a list of it. */
  readonly with?: readonly (readonly [string, string | number | boolean])[];
  /** Set where nothing stands yet and nothing has to: one more point of a ring. */
  readonly oneMore?: true;
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

/** The field that comes after one: the next that has no value and needs one. Undefined at the end. */
export function fieldAfter(
  record: JobRecord,
  groups: readonly FieldGroup[],
  id: string,
  idOf: (field: AnyField) => string,
): AnyField | undefined {
  const open = groups.filter(({ folded }) => folded !== true).flatMap(({ fields }) => fields);
  const at = open.findIndex((field) => idOf(field) === id);
  const current = open[at];
  // One more point is offered as long as points are entered; passed over empty, it ends them.
  const passed = current !== undefined && isReading(current) && current.oneMore === true;
  return open
    .slice(at + 1)
    .find(
      (field) =>
        field.optional !== true &&
        valueAt(record, field.spot) === undefined &&
        !(passed && isReading(field) && field.oneMore === true && field.spot.path === current.spot.path),
    );
}

/** The field before one, in the order of the tests. */
export function fieldBefore(
  groups: readonly FieldGroup[],
  id: string,
  idOf: (field: AnyField) => string,
): AnyField | undefined {
  const open = groups.filter(({ folded }) => folded !== true).flatMap(({ fields }) => fields);
  return open[open.findIndex((field) => idOf(field) === id) - 1];
}
