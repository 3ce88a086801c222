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

export const USAGE = `goodgrounds – weigh the evidence of an electrical inspection

  goodgrounds weigh FILE... [--all] [--json] [--probability]
                      [--grounds | --grounds-of CHECK]
      Check every circuit by calculation. FILE is an inspection file, a folder of
      them, a .jsonl stream with one inspection a line, or - for standard input.
  goodgrounds weigh FILE --earlier FILE [--earlier FILE]...
      The same, and then and now: beside earlier inspections of the installation.
  goodgrounds report FILE --out PATH [--earlier FILE]...
      Write the condition report as PDF, with the inspection file attached.
  goodgrounds calendar FILE --out PATH
      Write what the law asks, with its dates, as a calendar (iCalendar).
  goodgrounds compute NAME [need=value...] [--json]
      Run one check, calculation or table with figures given by hand.
  goodgrounds compute --list
      List everything that can be computed.
  goodgrounds ring r1=... rn=... r2=... [point="NAME; L-N; L-cpc"...] [--json]
      What explains the readings of one ring final circuit.
  goodgrounds reason TOPIC [fact=value...] [--json]
      The line of reasoning from facts to a classification, question by question.
  goodgrounds reason --list [WORDS]
      List the topics.
  goodgrounds topics check|format|changed FOLDER [--check] [--all] [--json]
      A firm's own folder of topics and standing views: hold it to the laws, write
      it in its one spelling, or show what it changes. Other commands load it with
      --topics FOLDER: weigh, report, reason, compare-choices.
  goodgrounds topics show ID [--topics FOLDER]
      The text of a topic.
  goodgrounds compare-choices FOLDER|FILE... [--by person|file] [--json]
      Show where the same facts were classified differently in past inspections,
      and how far the choices agree.
  goodgrounds own-figures FILE [--earlier FILE] [--all] [--json]
      For the inspector alone: readings worth confirming before somebody asks.
  goodgrounds schema
      Print the JSON Schema of the inspection file.

  --help, --version

Exit codes: 0 done, 2 input wrong, 3 file unreadable, 1 our fault.
`;
