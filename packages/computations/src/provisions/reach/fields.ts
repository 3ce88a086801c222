import type { Issue, Path } from "@good-grounds/core";

/** Reads the fields of plain data and notes everything that is not as expected. Stops noting after `MOST`. */
export class Fields {
  readonly issues: Issue[] = [];

  note(code: string, path: Path, found: unknown, expected: string, advice: string): undefined {
    if (this.issues.length < MOST) this.issues.push({ code, path, found: shown(found), expected, advice });
    return undefined;
  }

  /** An object with just these keys; a key that is left out or one too many is an issue. */
  object(value: unknown, path: Path, keys: readonly string[]): Readonly<Record<string, unknown>> | undefined {
    if (typeof value !== "object" || value === null || Array.isArray(value)) {
      return this.note("not-an-object", path, value, `an object with ${keys.join(", ")}`, "write an object");
    }
    for (const key of keys) {
      const stated = Object.hasOwn(value, key) && (value as Readonly<Record<string, unknown>>)[key] !== undefined;
      if (!stated) this.note("left-out", [...path, key], undefined, `a value for ${key}`, "state it");
    }
    for (const key of Object.keys(value).slice(0, MOST)) {
      if (keys.includes(key)) continue;
      this.note("unknown-key", [...path, key.slice(0, 40)], key, `one of ${keys.join(", ")}`, "check the name");
    }
    return value as Readonly<Record<string, unknown>>;
  }

  list<T>(
    value: unknown,
    path: Path,
    [least, most]: readonly [number, number],
    read: (entry: unknown, path: Path) => T | undefined,
  ): readonly T[] {
    if (value === undefined) return [];
    if (!Array.isArray(value)) {
      this.note("not-a-list", path, value, "a list", "write a list");
      return [];
    }
    if (value.length < least || value.length > most) {
      const advice = value.length < least ? "add what is there" : "leave out what cannot matter, or divide the scene";
      this.note("wrong-count", path, `${value.length} entries`, `${least} to ${most} entries`, advice);
      return [];
    }
    // A hole in a list is left out by most of its methods; here it is read as nothing.
    return Array.from(value, (entry, i) => read(entry ?? null, [...path, i])).filter((entry) => entry !== undefined);
  }

  number(value: unknown, path: Path, low: number, high: number): number | undefined {
    if (value === undefined) return undefined;
    if (typeof value === "number" && value >= low && value <= high) return value;
    return this.note("not-in-range", path, value, `a number of metres from ${low} to ${high}`, "give it in metres");
  }

  flag(value: unknown, path: Path): boolean | undefined {
    if (value === undefined || typeof value === "boolean") return value;
    return this.note("not-yes-or-no", path, value, "true or false", "write true or false");
  }

  word<const W extends string>(value: unknown, path: Path, words: readonly W[]): W | undefined {
    if (value === undefined) return undefined;
    const word = words.find((one) => one === value);
    return word ?? this.note("not-in-list", path, value, `one of ${words.join(", ")}`, "choose one of these");
  }

  name(value: unknown, path: Path): string | undefined {
    if (value === undefined) return undefined;
    if (typeof value === "string" && value.trim() !== "" && value.length <= 60) return value;
    return this.note("not-a-name", path, value, "a name of 1 to 60 characters", "name it");
  }
}

const MOST = 100;

function shown(value: unknown): string {
  if (value === undefined) return "nothing";
  if (typeof value === "string") return value.length > 60 ? `${value.slice(0, 60)}…` : value;
  if (typeof value === "object" && value !== null)
    return Array.isArray(value) ? `a list of ${value.length}` : "an object";
  return String(value).slice(0, 60);
}
