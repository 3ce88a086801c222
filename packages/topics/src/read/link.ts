import type { Word } from "../document/condition.ts";
import type { Link, LinkPart, Node, Recorded } from "../document/document.ts";
import { type Line, spotIn } from "../text/lines.ts";
import { COMMA, type Desk, listOf, match, OR } from "./desk.ts";
import { readBelow } from "./statements.ts";

/** `answered by CHECK [MATTER]: VALUE when met, VALUE when not met`. */
export function readLink(line: Line, desk: Desk): Link | undefined {
  const head = match(line, /^answered by (?<by>[a-z0-9-]+)(?: (?<matter>[a-z0-9-]+))?: (?<gives>.+)$/);
  const { by, matter, gives } = head ?? {};
  if (by === undefined || gives === undefined)
    return desk.misspelt(
      line,
      '"answered by", the id of a check, ":", and a value "when met" or "when not met" or both',
    );
  let met: readonly Word[] = [];
  let notMet: readonly Word[] = [];
  for (const part of listOf(gives, COMMA)) {
    const found = /^(.*) when (not )?met$/.exec(part.text);
    if (found === null)
      return desk.fault(
        part.at,
        `"${part.text}"`,
        'a value and "when met" or "when not met"',
        "part the two by a comma",
      );
    const values = listOf({ text: found[1] ?? "", at: part.at }, OR);
    if (found[2] === undefined) met = values;
    else notMet = values;
  }
  const and: (LinkPart & Node)[] = [];
  let findings: Link["findings"];
  readBelow(line, desk, [
    {
      begins: "with",
      often: true,
      read: (one) => {
        const { by: other, matter: its } = match(one, /^with (?<by>[a-z0-9-]+)(?: (?<matter>[a-z0-9-]+))?$/) ?? {};
        if (other === undefined) desk.misspelt(one, '"with" and the id of a check that has to be met as well');
        else and.push({ ...placed(one), by: other, ...(its === undefined ? {} : { matter: its }) });
      },
    },
    {
      begins: "findings",
      read: (one) => {
        desk.nothingBelow(one);
        if (one.text === "findings never") findings = "none";
        else if (one.text === "findings only where not met") findings = "not-met-only";
        else desk.misspelt(one, '"findings never" or "findings only where not met"');
      },
    },
  ]);
  return {
    ...placed(line),
    by,
    ...(matter === undefined ? {} : { matter }),
    met,
    notMet,
    and,
    ...(findings === undefined ? {} : { findings }),
  };
}

/** `recorded as PROPERTY: RECORDED is VALUE, RECORDED is VALUE or VALUE`; nothing behind the property where the values are the same. */
export function readRecorded(line: Line, desk: Desk): Recorded | undefined {
  desk.nothingBelow(line);
  const { property, gives } = match(line, /^recorded as (?<property>[a-z0-9-]+)(?:: (?<gives>.+))?$/) ?? {};
  if (property === undefined)
    return desk.misspelt(
      line,
      '"recorded as", a property of the inspection file, ":", and what each of its values answers, such as "tt is yes"',
    );
  const pairs = gives === undefined ? [] : listOf(gives, COMMA);
  const read = pairs.flatMap((pair) => {
    const found = /^(\S+) is (\S.*)$/.exec(pair.text);
    if (found === null) {
      desk.fault(
        pair.at,
        `"${pair.text}"`,
        'a recorded value, "is", and the answer it gives',
        "part several by commas",
      );
      return [];
    }
    const [, recorded = "", values = ""] = found;
    const start = pair.at.from + pair.text.length - values.length;
    return [
      {
        recorded: { text: recorded, at: { ...pair.at, to: pair.at.from + recorded.length } },
        values: listOf({ text: values, at: { ...pair.at, from: start } }, OR),
      },
    ];
  });
  return { ...placed(line), property, gives: read };
}

export function placed(line: Line): Node {
  return { at: spotIn(line), notes: line.notes };
}
