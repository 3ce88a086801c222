import { inspectionJsonSchema } from "@good-grounds/inspection/json-schema";

/** What of JSON Schema is looked at here. */
interface Schema {
  readonly anyOf?: readonly Schema[];
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly required?: readonly string[];
  readonly items?: Schema;
  readonly additionalProperties?: boolean | Schema;
}

export type Place = readonly (string | number)[];

/** Every place of a document where a member stands that its published schema requires. */
export function requiredPlaces(document: unknown): readonly Place[] {
  const found = new Map<string, Place>();
  walk(inspectionJsonSchema() as Schema, document, [], found);
  return [...found.values()];
}

function walk(schema: Schema, value: unknown, at: Place, found: Map<string, Place>): void {
  for (const branch of schema.anyOf ?? []) if (takes(branch, value)) walk(branch, value, at, found);
  if (Array.isArray(value)) {
    for (const [i, member] of value.entries()) walk(schema.items ?? {}, member, [...at, i], found);
    return;
  }
  if (typeof value !== "object" || value === null) return;
  for (const [name, inner] of Object.entries(value)) {
    const path = [...at, name];
    if (schema.required?.includes(name)) found.set(path.join("/"), path);
    const { additionalProperties: other } = schema;
    walk(schema.properties?.[name] ?? (typeof other === "object" ? other : {}), inner, path, found);
  }
}

/** Whether a form is the one a value has: an object with the members that the form requires. */
function takes({ properties, required = [] }: Schema, value: unknown): boolean {
  if (properties === undefined) return false;
  return typeof value === "object" && value !== null && required.every((name) => Object.hasOwn(value, name));
}

/** The document without what stands at a place. */
export function without(document: unknown, place: Place): unknown {
  const copy = structuredClone(document);
  const [last] = place.slice(-1);
  let holder: unknown = copy;
  for (const step of place.slice(0, -1)) holder = Reflect.get(holder as object, step);
  if (last !== undefined) Reflect.deleteProperty(holder as object, last);
  return copy;
}
