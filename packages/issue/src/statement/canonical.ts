import { isWhole, StatementFault } from "./lines.ts";

/**
 * Data as JSON in the one spelling of RFC 8785: members in the order of their names by UTF-16 units, numbers as ECMAScript
 * writes them, no white space. Throws {@link StatementFault} for what JSON cannot hold and for half of a character.
 */
export function canonical(value: unknown): string {
  if (value === null || typeof value === "boolean") return String(value);
  if (typeof value === "string") {
    if (!isWhole(value)) throw new StatementFault("half of a character, where whole text was expected");
    return JSON.stringify(value);
  }
  if (typeof value === "number") {
    if (!Number.isFinite(value)) throw new StatementFault(`found ${value}, where a finite number was expected`);
    return JSON.stringify(value);
  }
  if (Array.isArray(value)) return `[${value.map(canonical).join(",")}]`;
  if (typeof value !== "object") throw new StatementFault(`found ${typeof value}, where data was expected`);
  const members = Object.entries(value).sort(([one], [other]) => (one < other ? -1 : 1));
  return `{${members.map(([name, inner]) => `${canonical(name)}:${canonical(inner)}`).join(",")}}`;
}
