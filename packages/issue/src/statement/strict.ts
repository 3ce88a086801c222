import { pointer } from "@good-grounds/core";
import { repeatedMembers } from "@good-grounds/inspection";
import { canonical } from "./canonical.ts";
import { StatementFault } from "./lines.ts";

/**
 * Reads JSON that two programs cannot read differently. Throws {@link StatementFault} where it is no JSON, where a name
 * stands twice in one object, or where half of a character stands alone.
 */
export function readStrict(text: string): unknown {
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch (error) {
    throw new StatementFault(`no JSON: ${error instanceof Error ? error.message : String(error)}`);
  }
  const [twice] = repeatedMembers(text);
  if (twice !== undefined)
    throw new StatementFault(`${pointer(twice.path)}: ${twice.found}, expected ${twice.expected}`);
  canonical(value);
  return value;
}

/** Reads JSON that must stand in its one spelling, with a line end after it or none. */
export function readCanonical(text: string): unknown {
  const value = readStrict(text);
  if (canonical(value) !== text.replace(/\n$/, ""))
    throw new StatementFault("written otherwise than this program writes it: it was changed or written anew");
  return value;
}
