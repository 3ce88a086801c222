import type { Issue, Path } from "@good-grounds/core";
import type { z } from "zod";

/** More than this many are not useful to a person; the rest is counted. */
const MOST = 500;

const FOUND_LENGTH = 80;

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

/** The schema's complaints as issues of this project, all of them, in document order of discovery. */
export function schemaIssues(error: z.ZodError, root: unknown): readonly Issue[] {
  const issues = error.issues.flatMap((raw) => translate(raw as Raw, root, []));
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
  const found = show(valueAt(root, path));
  switch (raw.code) {
    case "unrecognized_keys":
      return raw.keys.map((key) => ({
        code: "unknown-member",
        path: [...path, key],
        found: show(valueAt(root, [...path, key])),
        expected: "no member of this name here",
        advice: "check the spelling against the schema, or remove it; nothing is ignored silently",
      }));
    case "invalid_union":
      return (
        closestBranch(raw, root, path) ?? [plain("wrong-form", path, found, "one of the forms the schema allows here")]
      );
    case "invalid_type":
      if (found === "nothing") {
        return [
          plain("missing", path, found, article(raw.expected), "add this member; if it is not known, say so and why"),
        ];
      }
      return [plain("wrong-type", path, found, article(raw.expected))];
    case "invalid_value":
      return [plain("not-in-list", path, found, `one of ${raw.values.slice(0, 24).map(String).join(", ")}`)];
    case "too_small":
      return [plain("too-small", path, found, `at least ${String(raw.minimum)}${sizeOf(raw.origin)}`)];
    case "too_big":
      return [plain("too-big", path, found, `at most ${String(raw.maximum)}${sizeOf(raw.origin)}`)];
    case "custom":
      return [plain(raw.params?.fault ?? "invalid", path, found, raw.params?.expected ?? raw.message, raw.message)];
    default:
      return [plain("wrong-form", path, found, raw.message)];
  }
}

function sizeOf(origin: string): string {
  if (origin === "string") return " characters";
  if (origin === "array" || origin === "set") return " entries";
  return "";
}

/** Of a union's branches, the one whose complaints lie deepest or are fewest speaks for the value. */
function closestBranch(raw: Raw & { code: "invalid_union" }, root: unknown, path: Path): readonly Issue[] | undefined {
  const branches = raw.errors.filter((branch) => branch.length > 0);
  if (branches.length === 0) return undefined;
  const scored = branches.map((branch) => ({
    branch,
    score: branch.some((issue) => issue.path.length === 0 && issue.code === "invalid_type") ? 1000 : branch.length,
  }));
  scored.sort((a, b) => a.score - b.score);
  const best = scored[0];
  if (best === undefined || best.score >= 1000) return undefined;
  return best.branch.flatMap((issue) => translate(issue as Raw, root, path));
}

function article(kind: string): string {
  return /^[aeiou]/.test(kind) ? `an ${kind}` : `a ${kind}`;
}

function plain(code: string, path: Path, found: string, expected: string, advice = `write ${expected}`): Issue {
  return { code, path, found, expected, advice };
}
