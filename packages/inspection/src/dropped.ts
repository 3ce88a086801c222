import type { Issue, Path } from "@good-grounds/core";
import { unknownMember } from "./issues.ts";

/**
 * Members of the document that did not come through the schema. Objects of fixed shape refuse what they do not know, but
 * a list by name drops a name such as "__proto__" without a word; here it gets one.
 */
export function droppedMembers(document: unknown, accepted: unknown): readonly Issue[] {
  const issues: Issue[] = [];
  const waiting: { readonly from: object; readonly to: object; readonly path: Path }[] = [];
  if (isObject(document) && isObject(accepted)) waiting.push({ from: document, to: accepted, path: [] });
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    const { from, to, path } = next;
    for (const [name, inner] of Object.entries(from)) {
      if (inner === undefined) continue;
      const step = Array.isArray(from) ? Number(name) : name;
      if (!Object.hasOwn(to, name)) {
        issues.push(unknownMember([...path, step], inner));
        continue;
      }
      const kept: unknown = Reflect.get(to, name);
      if (isObject(inner) && isObject(kept)) waiting.push({ from: inner, to: kept, path: [...path, step] });
    }
  }
  return issues;
}

function isObject(value: unknown): value is object {
  return typeof value === "object" && value !== null;
}
