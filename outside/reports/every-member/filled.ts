import { SCALES } from "@good-grounds/core";
import { type InspectionFile, parseInspectionData } from "@good-grounds/inspection";
import { inspectionJsonSchema } from "@good-grounds/inspection/json-schema";

/** What of JSON Schema the published schema uses. */
interface Schema {
  readonly type?: string;
  readonly const?: unknown;
  readonly enum?: readonly unknown[];
  readonly anyOf?: readonly Schema[];
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly additionalProperties?: false | Schema;
  readonly items?: Schema;
  readonly minimum?: number;
  readonly maximum?: number;
  readonly pattern?: string;
  readonly format?: string;
  readonly examples?: readonly string[];
}

/** One value of the filled file with what has to be found of it on a page. */
export interface Filled {
  /** Where it stands, lists as stars: "boards/*\/name". */
  readonly member: string;
  readonly path: readonly (string | number)[];
  readonly value: unknown;
  /** Another value that the schema allows at the place; undefined where there is none. */
  readonly other: unknown;
}

/** Which of a stated fact's forms is filled in: what is known, or why it is not. */
export type Form = "known" | "not-known";

/** Values of the kinds that lead elsewhere, or that must agree with others, by member. */
type Given = Readonly<Record<string, unknown>>;

/**
 * A file with every member of the schema filled, each text, quantity, day and number another. `given` are the members
 * that lead elsewhere.
 */
export class Filler {
  readonly found: Filled[] = [];
  readonly #form: Form;
  readonly #given: Given;
  #next = 0;

  constructor(form: Form, given: Given) {
    this.#form = form;
    this.#given = given;
  }

  file(): unknown {
    return this.#fill(inspectionJsonSchema() as Schema, []);
  }

  #fill(schema: Schema, path: readonly (string | number)[]): unknown {
    const member = memberOf(path);
    if (Object.hasOwn(this.#given, member)) return this.#given[member];
    const inner = schema.anyOf === undefined ? schema : this.#branch(schema.anyOf, member);
    if (inner.anyOf !== undefined) return this.#fill(inner, path);
    if (inner.properties !== undefined)
      return Object.fromEntries(
        Object.entries(inner.properties).map(([name, one]) => [name, this.#fill(one, [...path, name])]),
      );
    if (inner.type === "array") return [this.#fill(inner.items ?? {}, [...path, 0])];
    if (inner.type === "object") return {};
    const value = this.#value(inner);
    this.found.push({ member, path, value, other: this.#other(inner, schema, value) });
    return value;
  }

  #branch(all: readonly Schema[], member: string): Schema {
    const silent = all.find(
      ({ properties }) => properties?.notKnown !== undefined || properties?.notTaken !== undefined,
    );
    if (this.#form === "not-known" && silent !== undefined) return silent;
    const known = all.filter((one) => one !== silent && one.properties?.from === undefined);
    const [first] = known.length > 0 ? known : all;
    if (first === undefined) throw new Error(`nothing can stand at ${member}`);
    // Of several forms the fuller one: an object rather than a word.
    return known.find(({ properties }) => properties !== undefined) ?? first;
  }

  #value(schema: Schema): unknown {
    if (schema.const !== undefined) return schema.const;
    if (schema.enum !== undefined) return schema.enum.at(-1);
    if (schema.type === "boolean") return true;
    this.#next += 1;
    const next = this.#next;
    if (schema.type === "integer")
      return Math.min(schema.maximum ?? next, Math.max(schema.minimum ?? 0, 1 + (next % 50)));
    if (schema.format === "date") return `20${String(10 + (next % 15))}-0${1 + (next % 9)}-${String(10 + (next % 18))}`;
    if (schema.format === "date-time")
      return `2026-10-${String(10 + (next % 18))}T${String(next % 24).padStart(2, "0")}:${String(next % 60).padStart(2, "0")}:00+01:00`;
    const unit = schema.examples?.map((example) => example.replace(/^1 ?/, "")).find((symbol) => SCALES.has(symbol));
    if (unit !== undefined) return `${3 + (next % 90)}.${String(11 + (next % 88))} ${unit}`;
    if (schema.examples !== undefined) return schema.examples[0];
    if (schema.pattern?.includes("[0-9a-f]{64}") === true) return next.toString(16).padStart(64, "a");
    if (schema.pattern === String.raw`^\d{1,12}$`) return `9000${next}`;
    if (schema.pattern?.includes("ML0-9") === true) return `M10 10 L${next} 90`;
    if (schema.pattern?.startsWith("^[A-Za-z0-9]") === true) return `id${next}`;
    return `Zq${String(next).padStart(4, "0")} words`;
  }

  #other(schema: Schema, outer: Schema, value: unknown): unknown {
    if (schema.enum !== undefined) return schema.enum.find((one) => one !== value);
    if (schema.type === "boolean") return false;
    if (schema.type === "integer") return typeof value === "number" && value > (schema.minimum ?? 0) ? value - 1 : 2;
    if (schema.const !== undefined)
      return outer.anyOf?.find((one) => one.const !== undefined && one.const !== value)?.const;
    const another = this.#value(schema);
    return another === value ? undefined : another;
  }
}

export function memberOf(path: readonly (string | number)[]): string {
  return path.map((step) => (typeof step === "number" ? "*" : step)).join("/");
}

/** The file with one place changed. */
export function withAt(data: unknown, [step, ...rest]: readonly (string | number)[], value: unknown): unknown {
  if (step === undefined) return value;
  if (Array.isArray(data)) return data.map((one, i) => (i === step ? withAt(one, rest, value) : one));
  const here = data as Readonly<Record<string, unknown>>;
  return { ...here, [step]: withAt(here[step], rest, value) };
}

export function opened(data: unknown): InspectionFile | undefined {
  const parsed = parseInspectionData(data);
  return parsed.ok ? parsed.file : undefined;
}

/** What is wrong with data, for the message of a test. */
export function wrongIn(data: unknown): string {
  const parsed = parseInspectionData(data);
  return parsed.ok ? "" : JSON.stringify(parsed.issues.map(({ path, code }) => `${path.join("/")}: ${code}`));
}
