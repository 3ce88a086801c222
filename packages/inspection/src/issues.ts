import type { Issue, Path } from "@good-grounds/core";
import type { z } from "zod";

/** More than this many are not useful to a person; the rest is counted. */
const MOST = 500;

const FOUND_LENGTH = 80;

/** A list of words longer than this is not read to its end. */
const LONGEST_LIST = 24;

/** What stands at a path, as text short enough for a message. Never runs code of the value. */
export function show(value: unknown): string {
  if (value === undefined) return "nothing";
  if (typeof value === "string") return shorten(JSON.stringify(value));
  if (typeof value === "number" || typeof value === "boolean" || value === null) return String(value);
  if (Array.isArray(value)) return `a list of ${value.length}`;
  const keys = Object.keys(value as object);
  return shorten(`an object with ${keys.length === 0 ? "no members" : keys.slice(0, 5).join(", ")}`);
}

function shorten(text: string): string {
  const points = [...text];
  return points.length <= FOUND_LENGTH ? text : `${points.slice(0, FOUND_LENGTH).join("")}…`;
}

export function valueAt(root: unknown, path: Path): unknown {
  let value = root;
  for (const step of path) {
    if (typeof value !== "object" || value === null || !Object.hasOwn(value, step)) return undefined;
    value = (value as Record<string | number, unknown>)[step];
  }
  return value;
}

/** The schema's complaints as issues of this project, in the order the schema was walked. */
export function schemaIssues(error: z.ZodError, root: unknown): readonly Issue[] {
  const issues = new Map<string, Issue>();
  for (const raw of error.issues) {
    for (const issue of translate(raw as Raw, root, [])) {
      // A whole number has limits of its own; where the schema sets a closer one, that one speaks.
      issues.set(`${issue.code} ${JSON.stringify(issue.path)}`, issue);
    }
  }
  return [...issues.values()];
}

/** As many issues as are of use to a person; the rest is counted. */
export function bounded(issues: readonly Issue[]): readonly Issue[] {
  if (issues.length <= MOST) return issues;
  return [
    ...issues.slice(0, MOST),
    {
      code: "more-issues",
      path: [],
      found: `${issues.length - MOST} more`,
      expected: "a file that follows the schema",
      advice: "correct the ones above and try again",
    },
  ];
}

type Raw = z.core.$ZodIssue & { readonly params?: { readonly fault?: string; readonly expected?: string } };

function translate(raw: Raw, root: unknown, prefix: Path): readonly Issue[] {
  const path: Path = [...prefix, ...(raw.path as (string | number)[])];
  const value = valueAt(root, path);
  const found = show(value);
  const form = formOf(raw);
  if (value === undefined && form !== undefined) {
    return [plain("missing", path, found, form, "add this member; if it is not known, say so and why")];
  }
  switch (raw.code) {
    case "unrecognized_keys":
      return unknownMembers(raw.keys, path, root);
    case "invalid_union":
      return closestBranch(raw, value, root, path) ?? [plain("wrong-form", path, found, form ?? raw.message)];
    case "invalid_type":
      return [plain("wrong-type", path, found, kindOf(raw))];
    case "invalid_value":
      return [plain("not-in-list", path, found, listed(raw, value))];
    case "invalid_key":
      return [plain("wrong-name", path, show(path.at(-1)), raw.issues[0]?.message ?? raw.message)];
    case "too_small":
      return [plain("too-small", path, found, `at least ${String(raw.minimum)}${sizeOf(raw.origin, raw.minimum)}`)];
    case "too_big":
      return [plain("too-big", path, found, `at most ${String(raw.maximum)}${sizeOf(raw.origin, raw.maximum)}`)];
    case "custom":
      return [plain(raw.params?.fault ?? "invalid", path, found, raw.params?.expected ?? raw.message, raw.message)];
    default:
      return [plain("wrong-form", path, found, raw.message)];
  }
}

/** Members the schema does not have at this place; of very many, the rest is one issue, so that memory stays bounded. */
function unknownMembers(keys: readonly string[], path: Path, root: unknown): readonly Issue[] {
  const named = keys.slice(0, MOST).map((key) => unknownMember([...path, key], valueAt(root, [...path, key])));
  const more = keys.length - named.length;
  if (more === 0) return named;
  return [...named, { ...unknownMember(path, undefined), found: `${more} more members of names it does not have` }];
}

/** A member the schema does not have at this place. */
export function unknownMember(path: Path, value: unknown): Issue {
  return {
    code: "unknown-member",
    path,
    found: show(value),
    expected: "no member of this name here",
    advice: "check the spelling against the schema, or remove it; nothing is ignored silently",
  };
}

/** The form asked for by a complaint about the form of a value as a whole; undefined where it is about a part of it. */
function formOf(raw: z.core.$ZodIssue): string | undefined {
  if (raw.path.length > 0 && raw.code === "invalid_union") return formOf({ ...raw, path: [] });
  if (raw.code === "invalid_type") return kindOf(raw);
  if (raw.code === "invalid_value") return listed(raw);
  if (raw.code !== "invalid_union") return undefined;
  const forms = raw.errors.flatMap(([first]) => (first === undefined ? [] : (formOf(first) ?? [])));
  return [...new Set(forms)].join(", or ") || undefined;
}

/** The kind of value asked for: in the schema's own words where it has some, else by its name. */
function kindOf(raw: z.core.$ZodIssue & { code: "invalid_type" }): string {
  return raw.message.startsWith("Invalid input") ? article(raw.expected) : raw.message;
}

function listed(raw: z.core.$ZodIssue & { code: "invalid_value" }, value?: unknown): string {
  const words = raw.values.map(String);
  if (words.length === 1) return words.join("");
  if (words.length <= LONGEST_LIST) return `one of ${words.join(", ")}`;
  // Of a long list, the words that begin most like what was found.
  const alike = (word: string) => {
    const found = typeof value === "string" ? value : "";
    let same = 0;
    while (same < found.length && word[same] === found[same]) same += 1;
    return same;
  };
  const nearest = words.sort((a, b) => alike(b) - alike(a)).slice(0, 8);
  return `one of ${words.length} words, such as ${nearest.join(", ")}`;
}

function sizeOf(origin: string, size: number | bigint): string {
  const plural = Number(size) === 1 ? "" : "s";
  if (origin === "string") return ` character${plural}`;
  if (origin === "array" || origin === "set") return Number(size) === 1 ? " entry" : " entries";
  return "";
}

/**
 * Of a union's branches, the one that takes a value of this kind and has the fewest complaints speaks for it. Undefined
 * where the value is of a kind that no branch takes.
 */
function closestBranch(
  raw: Raw & { code: "invalid_union" },
  value: unknown,
  root: unknown,
  path: Path,
): readonly Issue[] | undefined {
  const [best] = raw.errors
    .filter((branch) => branch.length > 0 && !branch.some((issue) => refusesKind(issue, value)))
    .sort((a, b) => complaints(a) - complaints(b));
  if (best === undefined) return undefined;
  // A word that is not in the list may have been meant for another form, so all of them are named.
  const [only] = best;
  if (only?.code === "invalid_value" && only.path.length === 0) {
    return [plain("not-in-list", path, show(value), formOf(raw) ?? listed(only))];
  }
  return best.flatMap((issue) => translate(issue as Raw, root, path));
}

/** How much is wrong by a branch: every member it does not know counts by itself. */
function complaints(branch: readonly z.core.$ZodIssue[]): number {
  return branch.reduce((sum, issue) => sum + (issue.code === "unrecognized_keys" ? issue.keys.length : 1), 0);
}

/** Whether a complaint is that the value as a whole is of another kind than this branch takes. */
function refusesKind(issue: z.core.$ZodIssue, value: unknown): boolean {
  if (issue.path.length > 0) return false;
  if (issue.code === "invalid_type") return true;
  return issue.code === "invalid_value" && !issue.values.some((allowed) => typeof allowed === typeof value);
}

function article(kind: string): string {
  return /^[aeiou]/.test(kind) ? `an ${kind}` : `a ${kind}`;
}

function plain(code: string, path: Path, found: string, expected: string, advice = `write ${expected}`): Issue {
  return { code, path, found, expected, advice };
}
