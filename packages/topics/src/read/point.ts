import type { Condition } from "../document/condition.ts";
import type { Point, State } from "../document/document.ts";
import { type Line, spotIn } from "../text/lines.ts";
import { readCondition } from "./condition.ts";
import { type Desk, match } from "./desk.ts";
import { placed } from "./link.ts";
import { behind, readBelow } from "./statements.ts";

/** `contested NAME: question`, below it each position with `because`. */
export function readPoint(line: Line, desk: Desk): Point | undefined {
  const { name, question } = match(line, /^contested (?<name>[a-z0-9][a-z0-9-]*): (?<question>.+)$/) ?? {};
  if (name === undefined || question === undefined)
    return desk.misspelt(line, '"contested", a name, ":", and the question on which inspectors differ');
  return desk.within(`contested ${name.text}`, () => {
    const positions: Point["positions"][number][] = [];
    readBelow(line, desk, [], (one) => {
      const { name: position, clause } = match(one, /^(?<name>[a-z0-9][a-z0-9-]*): (?<clause>.+)$/) ?? {};
      if (position === undefined || clause === undefined) return false;
      let because = "";
      readBelow(one, desk, [
        {
          begins: "because",
          read: (line) => {
            because = behind(line, "because").text;
          },
        },
      ]);
      if (because === "")
        desk.fault(
          spotIn(one),
          "a position without its ground",
          '"because" and what it rests on',
          "say below it why this is held",
        );
      positions.push({ ...placed(one), name: position, clause: clause.text, because });
      return true;
    });
    if (positions.length < 2)
      desk.fault(
        spotIn(line),
        `a contested point with ${positions.length === 1 ? "one position" : "no positions"}`,
        "two or more, the more usual first",
        'write each as "position: what is held"',
      );
    return { kind: "contested", ...placed(line), name, question: question.text, positions };
  });
}

/** `state NAME of THING: words`, below it the values, best first; each but the first with `when`. */
export function readState(line: Line, desk: Desk): State | undefined {
  const { name, thing, words } =
    match(line, /^state (?<name>[a-z0-9][a-z0-9-]*) of (?<thing>[^:]+): (?<words>.+)$/) ?? {};
  if (name === undefined || thing === undefined || words === undefined)
    return desk.misspelt(line, '"state", a name, "of", a thing, ":", and what it is about');
  return desk.within(`state ${name.text}`, () => {
    const values: State["values"][number][] = [];
    readBelow(line, desk, [], (one) => {
      const { name: value, clause } = match(one, /^(?<name>[a-z0-9][a-z0-9-]*): (?<clause>.+)$/) ?? {};
      if (value === undefined || clause === undefined) return false;
      let when: Condition | undefined;
      readBelow(one, desk, [
        {
          begins: "when",
          read: (line) => {
            when = readCondition(line, 4, desk);
          },
        },
      ]);
      if ((when === undefined) !== (values.length === 0))
        desk.fault(
          spotIn(one),
          when === undefined ? "a value without its condition" : "a condition for the best value",
          '"when" below each value but the first, which is the best and holds where no other does',
          "write the values from best to worst",
        );
      values.push({ ...placed(one), name: value, clause: clause.text, ...(when === undefined ? {} : { when }) });
      return true;
    });
    if (values.length < 2)
      desk.fault(
        spotIn(line),
        `a state with ${values.length === 1 ? "one value" : "no values"}`,
        "two or more, the worst last",
        "write each with what is so",
      );
    return { kind: "state", ...placed(line), name, thing: thing.text.trim(), words: words.text, values };
  });
}
