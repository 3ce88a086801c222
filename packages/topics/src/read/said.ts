import { SEVERITIES, type Severity } from "@good-grounds/core";
import type { Condition, Word } from "../document/condition.ts";
import type { Formerly, Given, RemedyNode, Said } from "../document/document.ts";
import type { Line } from "../text/lines.ts";
import { readCondition } from "./condition.ts";
import { COMMA, type Desk, listOf, match, OR } from "./desk.ts";
import { placed } from "./link.ts";
import { readBelow } from "./statements.ts";

const CLASSES: readonly (Severity | "FI")[] = [...SEVERITIES, "FI"];

/** `said CLASS: a sentence or two`, below it the rule under which they are true and what they say could not be found out. */
export function readSaid(line: Line, desk: Desk): Said | undefined {
  const { under, words } = match(line, /^said (?<under>C1|C2|C3|FI|none): (?<words>.+)$/) ?? {};
  const known = CLASSES.find((one) => one === under?.text);
  if (known === undefined || words === undefined)
    return desk.misspelt(line, '"said", a classification, ":", and a plain sentence');
  let when: Condition | undefined;
  let unsure: readonly Word[] = [];
  readBelow(line, desk, [
    {
      begins: "when",
      read: (one) => {
        when = readCondition(one, 4, desk);
      },
    },
    {
      begins: "unsure",
      read: (one) => {
        const { facts } = match(one, /^unsure (?<facts>.+)$/) ?? {};
        if (facts === undefined) desk.misspelt(one, '"unsure" and the facts that could not be found out');
        else unsure = listOf(facts, COMMA);
      },
    },
  ]);
  return {
    kind: "said",
    ...placed(line),
    under: known,
    words: words.text,
    ...(when === undefined ? {} : { when }),
    unsure,
  };
}

/** `remedy: what is done`, below it `makes NAME VALUE, ...`, and `fits when` where it is no remedy everywhere. */
export function readRemedy(line: Line, desk: Desk): RemedyNode | undefined {
  const { words } = match(line, /^remedy: (?<words>.+)$/) ?? {};
  if (words === undefined) return desk.misspelt(line, '"remedy:" and what is done');
  let makes: RemedyNode["makes"] = [];
  let fits: Condition | undefined;
  readBelow(line, desk, [
    {
      begins: "makes",
      read: (one) => {
        const { list } = match(one, /^makes (?<list>.+)$/) ?? {};
        if (list === undefined) desk.misspelt(one, '"makes", and each fact with its value afterwards');
        else makes = listOf(list, COMMA).flatMap((pair) => pairOf(pair, desk));
      },
    },
    {
      begins: "fits when",
      read: (one) => {
        fits = readCondition(one, "fits when".length, desk);
      },
    },
  ]);
  return { kind: "remedy", ...placed(line), words: words.text, makes, ...(fits === undefined ? {} : { fits }) };
}

function pairOf(pair: Word, desk: Desk): RemedyNode["makes"] {
  const found = /^(\S+) (\S+)$/.exec(pair.text);
  const [, fact = "", value = ""] = found ?? [];
  if (found === null) {
    desk.fault(pair.at, `"${pair.text}"`, "a fact and its value afterwards", "part several by commas");
    return [];
  }
  const to = pair.at.from + fact.length;
  return [
    {
      fact: { text: fact, at: { ...pair.at, to } },
      value: { text: value, at: { ...pair.at, from: pair.at.to - value.length } },
    },
  ];
}

/** `given NAME VALUE [or VALUE]`: what the subject itself says. */
export function readGiven(line: Line, desk: Desk): Given | undefined {
  desk.nothingBelow(line);
  const { fact, values } = match(line, /^given (?<fact>[a-z0-9][a-z0-9-]*) (?<values>.+)$/) ?? {};
  if (fact === undefined || values === undefined)
    return desk.misspelt(line, '"given", a shared fact, and the value or values that the subject itself says');
  return { kind: "given", ...placed(line), fact, values: listOf(values, OR) };
}

/** `formerly NAME as FACT: VALUE is VALUE [or VALUE], ...` or `formerly NAME as FACT` where the values are
 * the same, or `formerly NAME: no longer asked`: how earlier files are read. A value left out says too little. */
export function readFormerly(line: Line, desk: Desk): Formerly | undefined {
  desk.nothingBelow(line);
  const { gone } = match(line, /^formerly (?<gone>[a-z0-9][a-z0-9-]*): no longer asked$/) ?? {};
  if (gone !== undefined) return { kind: "formerly", ...placed(line), name: gone, values: [] };
  const { name, fact, list } =
    match(line, /^formerly (?<name>[a-z0-9][a-z0-9-]*) as (?<fact>[a-z0-9][a-z0-9-]*)(?:: (?<list>.+))?$/) ?? {};
  if (name === undefined || fact === undefined)
    return desk.misspelt(
      line,
      '"formerly", the name a fact had, "as", its name now, ":", and "VALUE is VALUE" for each',
    );
  const values = (list === undefined ? [] : listOf(list, COMMA)).flatMap((pair) => {
    const found = /^(\S+) is (\S.*)$/.exec(pair.text);
    if (found === null) {
      desk.fault(pair.at, `"${pair.text}"`, 'a former value, "is", and what it says now', "part several by commas");
      return [];
    }
    const [, former = "", now = ""] = found;
    return [
      {
        former: { text: former, at: { ...pair.at, to: pair.at.from + former.length } },
        now: listOf({ text: now, at: { ...pair.at, from: pair.at.to - now.length } }, OR),
      },
    ];
  });
  return { kind: "formerly", ...placed(line), name, fact, values };
}
