import { SCALES } from "@good-grounds/core";
import type { InspectionFile } from "@good-grounds/inspection";
import { inspectionJsonSchema } from "@good-grounds/inspection/json-schema";
import fc from "fast-check";
import { withSoundReferences } from "./sound-references.ts";

/** What of JSON Schema the published schema uses. */
interface Schema {
  readonly type?: "object" | "array" | "string" | "integer" | "boolean";
  readonly const?: unknown;
  readonly enum?: readonly unknown[];
  readonly anyOf?: readonly Schema[];
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly required?: readonly string[];
  readonly additionalProperties?: false | Schema;
  readonly propertyNames?: Schema;
  readonly items?: Schema;
  readonly minItems?: number;
  readonly maxItems?: number;
  readonly minimum?: number;
  readonly maximum?: number;
  readonly minLength?: number;
  readonly maxLength?: number;
  readonly pattern?: string;
  readonly format?: string;
  readonly examples?: readonly string[];
}

/** Longer lists say nothing new and take their time. */
const LONGEST_LIST = 3;

function drawn(schema: Schema): fc.Arbitrary<unknown> {
  if (schema.const !== undefined) return fc.constant(schema.const);
  if (schema.enum !== undefined) return fc.constantFrom(...schema.enum);
  if (schema.anyOf !== undefined) return fc.oneof(...schema.anyOf.map(drawn));
  switch (schema.type) {
    case "object":
      return objectOf(schema);
    case "array":
      return fc.array(drawn(schema.items ?? {}), {
        minLength: schema.minItems ?? 0,
        maxLength: Math.min(schema.maxItems ?? LONGEST_LIST, LONGEST_LIST),
      });
    case "boolean":
      return fc.boolean();
    case "integer":
      return fc.integer({ min: schema.minimum ?? 0, max: schema.maximum ?? 0 });
    case "string":
      return stringOf(schema);
    default:
      throw new Error(`the schema holds a form that is not made here: ${JSON.stringify(schema)}`);
  }
}

function objectOf({ properties, required = [], propertyNames, additionalProperties }: Schema): fc.Arbitrary<unknown> {
  if (properties !== undefined) {
    const model = Object.fromEntries(Object.entries(properties).map(([name, inner]) => [name, drawn(inner)]));
    return fc.record(model, { requiredKeys: [...required], noNullPrototype: true });
  }
  const names = drawn(propertyNames ?? {}) as fc.Arbitrary<string>;
  return fc.dictionary(names, drawn(additionalProperties || {}), { maxKeys: LONGEST_LIST, noNullPrototype: true });
}

function stringOf({ pattern, format, examples, minLength = 0, maxLength }: Schema): fc.Arbitrary<string> {
  if (format === "date") return moments.map((text) => text.slice(0, 10));
  if (format === "date-time") return fc.tuple(moments, fc.constantFrom("Z", "+01:00", "-11:30")).map((t) => t.join(""));
  const written = examples?.flatMap((example) => SCALES.get(example.replace(/^1 ?/, "")) ?? [])[0];
  if (written !== undefined) {
    const form = new RegExp(pattern ?? "", "u");
    return writtenIn(written.unit).filter((text) => form.test(text));
  }
  if (examples !== undefined) return fc.constantFrom(...examples);
  if (pattern === undefined) throw new Error("a text of any kind is not made here");
  const form = new RegExp(pattern, "u");
  // Classes of Unicode are more than a generator of regular expressions knows; such texts are drawn and sorted out.
  if (!pattern.includes("\\p{")) return fc.stringMatching(form);
  return fc
    .string({
      unit: fc.oneof(plain, fc.string({ unit: "binary", minLength: 1, maxLength: 1 })),
      minLength,
      maxLength: 60,
    })
    .filter((text) => form.test(text) && text.length >= minLength && text.length <= (maxLength ?? 60));
}

const plain = fc.constantFrom(..."abcXYZ019 .,-()%Ωé²—\u{1F50C}");

const moments = fc
  .date({ min: new Date("1900-01-01T00:00:00Z"), max: new Date("2199-12-31T23:59:59Z"), noInvalidDate: true })
  .map((date) => date.toISOString().slice(0, 19));

/** Every spelling of every scale of a unit, with and without sign, bound and space. */
function writtenIn(unit: string): fc.Arbitrary<string> {
  const symbols = [...SCALES].filter(([, scale]) => scale.unit === unit).map(([symbol]) => symbol);
  return fc
    .tuple(
      fc.constantFrom("", "<", ">", "> "),
      fc.constantFrom("", "", "-", "+"),
      fc.stringMatching(/^\d{1,6}(\.\d{1,4})?$/),
      fc.constantFrom("", " "),
      fc.constantFrom(...symbols),
    )
    .map((parts) => parts.join(""));
}

/**
 * Files made from the published JSON Schema alone, every member of it, with references mended so that they lead
 * somewhere. A member added to the schema is in here without anybody thinking of it.
 */
export const fileOfSchema: fc.Arbitrary<InspectionFile> = drawn(inspectionJsonSchema() as Schema).map((file) =>
  withSoundReferences(file as InspectionFile),
);
