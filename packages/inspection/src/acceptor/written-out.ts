import type * as z from "zod";
import { OWN_RULES } from "../schema/own-rules.ts";

/*
 * Writes code that says whether data plainly fits a schema: nothing is made while a program runs, so it holds under a
 * content policy that forbids code from text. What it does not accept is read through the schema itself, which knows why.
 */

/** A schema as it describes itself. Only what ours consist of is known; anything else is refused where the code is made. */
interface Definition {
  readonly type: string;
  readonly shape?: Readonly<Record<string, z.core.$ZodType>>;
  readonly catchall?: z.core.$ZodType;
  readonly element?: z.core.$ZodType;
  readonly innerType?: z.core.$ZodType;
  readonly keyType?: z.core.$ZodType;
  readonly valueType?: z.core.$ZodType;
  readonly options?: readonly z.core.$ZodType[];
  readonly values?: readonly unknown[];
  readonly entries?: Readonly<Record<string, string>>;
  readonly partial?: boolean;
  readonly checks?: readonly { readonly _zod: { readonly def: Check } }[];
  readonly format?: string;
  readonly pattern?: RegExp;
}

interface Check {
  readonly check: string;
  readonly format?: string;
  readonly pattern?: RegExp;
  readonly minimum?: number;
  readonly maximum?: number;
  readonly value?: number;
  readonly inclusive?: boolean;
}

const HEAD = `// Written by \`npm run acceptor\` from the schema of the inspection file; a test keeps it true. Not changed by hand.
import { isAccuracy, writtenFault } from "./rules.ts";

type Members = Readonly<Record<string, unknown>>;
`;

/** The module that accepts what plainly fits the schema: \`accepted\` gives the number of members of all objects, or -1. */
export function acceptorOf(schema: z.core.$ZodType): string {
  const code = new Code();
  const root = code.of(schema);
  return `${HEAD}
${code.declarations.join("\n")}

/** How many members the objects of the data have together; -1 where it does not plainly fit, each member in its order. */
export function accepted(data: unknown): number {
  return ${root}(data);
}
`;
}

/** Functions by what they say: schemas that say the same share one. */
class Code {
  readonly declarations: string[] = [];
  readonly #names = new Map<string, string>();
  readonly #known = new Map<z.core.$ZodType, string>();

  /** The name of the function that accepts a schema. */
  of(schema: z.core.$ZodType): string {
    const known = this.#known.get(schema);
    if (known !== undefined) return known;
    const name = this.#declared("a", (own) => `function ${own}(v: unknown): number {\n${this.#body(schema)}\n}`);
    this.#known.set(schema, name);
    return name;
  }

  /** A declaration under a name of its own, or the name of an earlier one that says the same. */
  #declared(letter: string, text: (name: string) => string): string {
    const said = text("");
    const known = this.#names.get(said);
    if (known !== undefined) return known;
    const name = `${letter}${this.#names.size}`;
    this.#names.set(said, name);
    this.declarations.push(text(name));
    return name;
  }

  #constant(letter: string, value: string): string {
    return this.#declared(letter, (name) => `const ${name} = ${value};`);
  }

  #body(schema: z.core.$ZodType): string {
    const def = schema._zod.def as unknown as Definition;
    switch (def.type) {
      case "object":
        return this.#object(def);
      case "array":
        return this.#array(def);
      case "record":
        return this.#record(def);
      case "string":
        return this.#string(def, schema);
      case "number":
        return number(def);
      case "boolean":
        return '  return typeof v === "boolean" ? 0 : -1;';
      case "literal":
        return `  return ${(def.values ?? []).map((value) => `v === ${JSON.stringify(value)}`).join(" || ")} ? 0 : -1;`;
      case "enum": {
        const words = this.#constant("w", `new Set<unknown>(${JSON.stringify(Object.values(def.entries ?? {}))})`);
        return `  return ${words}.has(v) ? 0 : -1;`;
      }
      case "union":
        return this.#union(def);
      case "optional":
        return `  return ${this.of(known(def.innerType))}(v);`;
      default:
        throw new Error(`no code is made of a schema of type ${def.type}`);
    }
  }

  #object({ shape = {}, catchall }: Definition): string {
    if (catchall?._zod.def.type !== "never") throw new Error("an object of the file refuses members it does not know");
    const names = Object.keys(shape);
    const places = this.#constant("p", `new Map(${JSON.stringify(names.map((name, i) => [name, i]))})`);
    const needed = names.filter((name) => shape[name]?._zod.def.type !== "optional");
    const cases = Object.values(shape).map((inner, i) => {
      const optional = inner._zod.def.type === "optional";
      const accepts = this.of(optional ? known((inner._zod.def as unknown as Definition).innerType) : inner);
      return `      case ${i}: ${optional ? "" : "needed--; "}n = ${accepts}(o[name]); break;`;
    });
    return `  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  const o = v as Members;
  let [all, last, needed, n] = [0, -1, ${needed.length}, 0];
  for (const name in o) {
    const place = ${places}.get(name);
    if (place === undefined || place <= last) return -1;
    last = place;
    switch (place) {
${cases.join("\n")}
    }
    if (n < 0) return -1;
    all += n + 1;
  }
  return needed === 0 ? all : -1;`;
  }

  #array({ element, checks = [] }: Definition): string {
    return `  if (!Array.isArray(v)${lengths(checks)}) return -1;
  let all = 0;
  for (let i = 0; i < v.length; i++) {
    const n = ${this.of(known(element))}(v[i]);
    if (n < 0) return -1;
    all += n;
  }
  return all;`;
  }

  #record({ keyType, valueType, partial }: Definition): string {
    if (known(keyType)._zod.def.type === "enum" && partial !== true)
      throw new Error("no code is made of a record in which every word has to be there");
    return `  if (typeof v !== "object" || v === null || Array.isArray(v)) return -1;
  let all = 0;
  for (const name in v) {
    if (${this.of(known(keyType))}(name) < 0) return -1;
    const n = ${this.of(known(valueType))}((v as Members)[name]);
    if (n < 0) return -1;
    all += n + 1;
  }
  return all;`;
  }

  #union({ options = [] }: Definition): string {
    const tries = options.map((option) => `  n = ${this.of(option)}(v);\n  if (n >= 0) return n;`);
    return `  let n = -1;\n${tries.join("\n")}\n  return -1;`;
  }

  #string({ checks = [], format, pattern }: Definition, schema: z.core.$ZodType): string {
    const own = format === undefined ? [] : [{ _zod: { def: { check: "string_format", format, pattern } as Check } }];
    const conditions = [...own, ...checks].flatMap(({ _zod: { def } }): string[] => {
      if (def.check === "string_format") {
        if (def.pattern === undefined) throw new Error(`no code is made of the format ${def.format}`);
        return [`${this.#constant("r", String(def.pattern))}.test(v)`];
      }
      if (def.check === "custom") return [ownRule(schema)];
      return lengthOf(def);
    });
    return `  return ${['typeof v === "string"', ...conditions].join(" && ")} ? 0 : -1;`;
  }
}

/**
 * A length is counted in characters by the schema and in halves of some of them here: what has few enough halves has few
 * enough characters, and what has more is left to the schema. Below one there is nothing to count.
 */
function lengthOf({ check, minimum, maximum }: Check): string[] {
  if (check === "max_length") return [`v.length <= ${maximum}`];
  if (check === "min_length" && minimum === 1) return ["v.length >= 1"];
  throw new Error(`no code is made of the check ${check}`);
}

function lengths(checks: Definition["checks"] = []): string {
  return checks
    .map(({ _zod: { def } }) => {
      if (def.check === "min_length") return ` || v.length < ${def.minimum}`;
      if (def.check === "max_length") return ` || v.length > ${def.maximum}`;
      throw new Error(`no code is made of the check ${def.check}`);
    })
    .join("");
}

function number({ format, checks = [] }: Definition): string {
  if (format !== "safeint") throw new Error("numbers of the file are whole");
  const limits = checks.map(({ _zod: { def } }) => {
    if (def.inclusive !== true) throw new Error("no code is made of a limit that is left out itself");
    if (def.check === "greater_than") return `(v as number) >= ${def.value}`;
    if (def.check === "less_than") return `(v as number) <= ${def.value}`;
    throw new Error(`no code is made of the check ${def.check}`);
  });
  return `  return ${["Number.isSafeInteger(v)", ...limits].join(" && ")} ? 0 : -1;`;
}

function ownRule(schema: z.core.$ZodType): string {
  const own = OWN_RULES.get(schema);
  if (own === undefined) throw new Error("a rule of our own is not named in OWN_RULES");
  if (own.rule === "accuracy") return "isAccuracy(v)";
  return `writtenFault(v, ${JSON.stringify(own.unit)}, ${own.exact}) === undefined`;
}

function known<T>(value: T | undefined): T {
  if (value === undefined) throw new Error("a schema lacks what schemas of its type consist of");
  return value;
}
