import type { Condition } from "../document/condition.ts";
import type { ContradictionNode, DangerNode, DepartureNode } from "../document/document.ts";
import { type Line, spotIn } from "../text/lines.ts";
import { readCondition } from "./condition.ts";
import { type Desk, match } from "./desk.ts";
import { placed } from "./link.ts";
import { behind, readBelow, withRegulations } from "./statements.ts";

/** `departure: clause [regulations]` with `when`. */
export function readDeparture(line: Line, desk: Desk): DepartureNode | undefined {
  const { words, regulations } = withRegulations(behind(line, "departure").text);
  const when = readWhen(line, desk);
  if (words === "") return desk.misspelt(line, '"departure:" and in what it falls short of the edition in force');
  return when === undefined ? undefined : { kind: "departure", ...placed(line), clause: words, regulations, when };
}

/** `danger NAME C1|C2: clause [regulations]` with `when`. */
export function readDanger(line: Line, desk: Desk): DangerNode | undefined {
  const { name, least, clause } =
    match(line, /^danger (?<name>[a-z0-9][a-z0-9-]*) (?<least>C1|C2): (?<clause>.+)$/) ?? {};
  if (name === undefined || clause === undefined)
    return desk.misspelt(line, '"danger", a name, C1 or C2, ":", and what is danger whatever else is said');
  const { words, regulations } = withRegulations(clause.text);
  const when = desk.within(`danger ${name.text}`, () => readWhen(line, desk));
  return when === undefined
    ? undefined
    : {
        kind: "danger",
        ...placed(line),
        name,
        least: least?.text === "C1" ? "C1" : "C2",
        clause: words,
        regulations,
        when,
      };
}

/** `contradiction: clause` with `when`. */
export function readContradiction(line: Line, desk: Desk): ContradictionNode | undefined {
  const { text } = behind(line, "contradiction");
  const when = readWhen(line, desk);
  if (text === "") return desk.misspelt(line, '"contradiction:" and why both cannot be true');
  return when === undefined ? undefined : { kind: "contradiction", ...placed(line), clause: text, when };
}

function readWhen(line: Line, desk: Desk): Condition | undefined {
  let when: Condition | undefined;
  let told = false;
  readBelow(line, desk, [
    {
      begins: "when",
      read: (one) => {
        told = true;
        when = readCondition(one, 4, desk);
      },
    },
  ]);
  if (!told)
    desk.fault(
      spotIn(line),
      "nothing says when it is so",
      '"when" and a condition below it',
      'write "when always" where it is so whatever is found',
    );
  return when;
}
