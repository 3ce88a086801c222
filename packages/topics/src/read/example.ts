import { SEVERITIES, type Severity } from "@good-grounds/core";
import type { Word } from "../document/condition.ts";
import type { Example, ExampleFact, Node } from "../document/document.ts";
import { type Line, spotIn } from "../text/lines.ts";
import { COMMA, type Desk, listOf, match, OR } from "./desk.ts";
import { placed } from "./link.ts";
import { behind, readBelow } from "./statements.ts";

/** `example WORDS`, below it what is known and what follows. */
export function readExample(line: Line, desk: Desk): Example | undefined {
  const name = behind(line, "example").text;
  if (name === "") return desk.misspelt(line, '"example" and the case in a few words');
  return desk.within(`example ${name}`, () => {
    const facts: ExampleFact[] = [];
    const limited: (Node & { fact: Word; reason: string })[] = [];
    let taking: Example["taking"] = [];
    let end: Ending | undefined;
    let isEndTold = false;
    readBelow(
      line,
      desk,
      [
        {
          begins: "taking",
          read: (one) => {
            taking = readTaking(one, desk);
          },
        },
        {
          begins: "->",
          read: (one) => {
            isEndTold = true;
            end = readEnding(one, desk);
          },
        },
      ],
      (one) => {
        const { fact, reason } = match(one, /^(?<fact>[a-z0-9][a-z0-9-]*) limited: (?<reason>.+)$/) ?? {};
        if (fact !== undefined && reason !== undefined) limited.push({ ...placed(one), fact, reason: reason.text });
        else facts.push(...readFacts(one, desk));
        desk.nothingBelow(one);
        return true;
      },
    );
    if (end === undefined && isEndTold) return undefined;
    if (end === undefined)
      return desk.fault(
        spotIn(line),
        "an example that says not what follows",
        '"->", the classification, and where the answer comes from in brackets',
        'write "-> C2 (source)" below it',
      );
    return { kind: "example", ...placed(line), name, facts, limited, taking, ...end };
  });
}

/** `NAME VALUE [or VALUE], NAME VALUE`. */
function readFacts(line: Line, desk: Desk): readonly ExampleFact[] {
  return listOf({ text: line.text, at: spotIn(line) }, COMMA).flatMap((pair) => {
    const found = /^(\S+) (\S.*)$/.exec(pair.text);
    if (found === null) {
      desk.fault(
        pair.at,
        `"${pair.text}"`,
        "a fact and its value",
        'several are parted by commas; what cannot be settled is written "fact limited: why"',
      );
      return [];
    }
    const [, fact = "", values = ""] = found;
    const to = pair.at.from + fact.length;
    return [
      {
        at: pair.at,
        notes: line.notes,
        fact: { text: fact, at: { ...pair.at, to } },
        values: listOf({ text: values, at: { ...pair.at, from: pair.at.to - values.length } }, OR),
      },
    ];
  });
}

/** `taking POINT POSITION, ...`. */
function readTaking(line: Line, desk: Desk): Example["taking"] {
  desk.nothingBelow(line);
  const { list } = match(line, /^taking (?<list>.+)$/) ?? {};
  return (list === undefined ? [] : listOf(list, COMMA)).flatMap((pair) => {
    const [point, position, more] = listOf(pair, /\s+/);
    if (point !== undefined && position !== undefined && more === undefined) return [{ point, position }];
    desk.fault(pair.at, `"${pair.text}"`, "a contested point and the position taken", "part several by commas");
    return [];
  });
}

type Ending = Pick<Example, "possible" | "isFI" | "open" | "source">;

/** `-> C2 [or C1][, so FI][, open NAME and NAME] (source)`. */
function readEnding(line: Line, desk: Desk): Ending | undefined {
  desk.nothingBelow(line);
  const { possible, fi, open, source } =
    match(line, /^-> (?<possible>[A-Za-z0-9 ]+?)(?<fi>, so FI)?(?:, open (?<open>[a-z0-9 -]+?))? \((?<source>.+)\)$/) ??
    {};
  if (possible === undefined || source === undefined)
    return desk.misspelt(
      line,
      '"->", one or several of none, C3, C2, C1 parted by "or", perhaps ", so FI" and ", open" with facts, and the source in brackets',
    );
  const classes = listOf(possible, OR).flatMap((word): readonly Severity[] => {
    const known = SEVERITIES.find((one) => one === word.text);
    if (known === undefined)
      desk.fault(
        word.at,
        `"${word.text}"`,
        `one of ${SEVERITIES.join(", ")}`,
        'FI is written ", so FI" behind what is possible',
      );
    return known === undefined ? [] : [known];
  });
  return {
    possible: classes,
    isFI: fi !== undefined,
    open: open === undefined ? [] : listOf(open, /\s+and\s+/),
    source: source.text,
  };
}
