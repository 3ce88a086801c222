import { type Issue, pointer } from "@good-grounds/core";
import { printable } from "@good-grounds/report";

/** Issues as text, each with its place, what was found, what was expected and what to do. */
export function issueLines(name: string, issues: readonly Issue[]): string {
  const lines = issues.map(({ path, found, expected, advice }) => {
    const place = pointer(path) || "/";
    // What was found may hold signs that move the cursor or turn the direction of writing.
    const said = [`  ${place}`, `    found ${found}`, `    expected ${expected}`];
    // Advice to write just what was expected would say it twice.
    return (advice === `write ${expected}` ? said : [...said, `    ${advice}`]).map(printable).join("\n");
  });
  const count = `${issues.length} ${issues.length === 1 ? "problem" : "problems"}`;
  return `${printable(name)}: ${count}\n${lines.join("\n")}\n`;
}
