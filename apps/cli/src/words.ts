import { type Issue, pointer } from "@good-grounds/core";

/** Issues as text, each with its place, what was found, what was expected and what to do. */
export function issueLines(name: string, issues: readonly Issue[]): string {
  const lines = issues.map(({ path, found, expected, advice }) => {
    const place = pointer(path) || "/";
    return `  ${place}\n    found ${found}\n    expected ${expected}\n    ${advice}`;
  });
  const count = `${issues.length} ${issues.length === 1 ? "problem" : "problems"}`;
  return `${name}: ${count}\n${lines.join("\n")}\n`;
}

export const USAGE = `goodgrounds – weigh the evidence of an electrical inspection

  goodgrounds weigh FILE... [--all] [--json]
                      [--grounds | --grounds-of CHECK]
      Check every circuit by calculation. FILE is an inspection file, a folder of
      them, a .jsonl stream with one inspection a line, or - for standard input.
  goodgrounds report FILE --out PATH
      Write the condition report as PDF, with the inspection file attached.
  goodgrounds compute NAME [need=value...] [--json]
      Run one check, calculation or table with figures given by hand.
  goodgrounds compute --list
      List everything that can be computed.
  goodgrounds schema
      Print the JSON Schema of the inspection file.

  --help, --version

Exit codes: 0 done, 2 input wrong, 3 file unreadable, 1 our fault.
`;
