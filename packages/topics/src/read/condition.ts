import type { Condition, Word } from "../document/condition.ts";
import { COMPARISONS } from "../document/condition.ts";
import { type Line, spotIn } from "../text/lines.ts";
import { type Desk, listOf } from "./desk.ts";

const BLOCKS = { "all of": "all", "any of": "any", "none of": "none", "not all of": "not-all" } as const;
const NAME = /^[a-z0-9][a-z0-9.-]*$/;

/** Reads the condition that stands on a line behind `start`, or below it, one to a line. Undefined after a fault. */
export function readCondition(line: Line, start: number, desk: Desk): Condition | undefined {
  const written = line.text.slice(start).trim();
  const block = Object.hasOwn(BLOCKS, written) ? BLOCKS[written as keyof typeof BLOCKS] : undefined;
  if (block !== undefined) {
    const of = line.below.map((one) => readCondition(one, 0, desk));
    if (of.length < 1)
      return desk.misspelt(line, `conditions below "${written}", one to a line, indented by two spaces`);
    return of.includes(undefined) ? undefined : { kind: block, of: of as Condition[], at: spotIn(line, start) };
  }
  desk.nothingBelow(line);
  const words = listOf({ text: line.text.slice(start), at: spotIn(line, start) }, /\s+/).filter(
    ({ text }) => text !== "",
  );
  if (words.length === 0) return desk.misspelt(line, 'a condition, such as "gap is tight or out-of-line"');
  return joined(words, line, desk);
}

/** Conditions joined by "and" or by "or"; never both on a line, since which goes first is read in two ways. */
function joined(words: readonly Word[], line: Line, desk: Desk): Condition | undefined {
  const terms: Condition[] = [];
  const signs = new Set<string>();
  let at = 0;
  while (at < words.length) {
    const read = term(words, at);
    if (read === undefined)
      return desk.fault(
        (words[at] ?? (words.at(-1) as Word)).at,
        `"${words[at]?.text ?? ""}" where a condition should stand`,
        'a fact, "not" and a fact, "gap is tight or wide", "gap is wide or worse", "depth less than 50 mm" or "always"',
        'several conditions are joined by "and" or by "or"',
      );
    terms.push(read.condition);
    at = read.next;
    if (at >= words.length) break;
    const sign = words[at] as Word;
    if (sign.text !== "and" && sign.text !== "or")
      return desk.fault(
        sign.at,
        `"${sign.text}" behind a condition`,
        '"and", "or" or the end of the line',
        "join conditions by one of them",
      );
    signs.add(sign.text);
    if (signs.size > 1)
      return desk.fault(
        sign.at,
        '"and" and "or" on one line',
        "one of them",
        'put the conditions below "all of" or "any of", one to a line',
      );
    at += 1;
    if (at === words.length)
      return desk.fault(sign.at, `"${sign.text}" at the end`, "a condition behind it", "finish it or take it away");
  }
  const [only] = terms;
  if (terms.length === 1 && only !== undefined) return only;
  return { kind: signs.has("or") ? "any" : "all", of: terms, at: spotIn(line) };
}

interface Read {
  readonly condition: Condition;
  readonly next: number;
}

function term(words: readonly Word[], at: number): Read | undefined {
  const first = words[at];
  if (first === undefined) return undefined;
  if (first.text === "always") return { condition: { kind: "always", at: first.at }, next: at + 1 };
  const negated = first.text === "not";
  const name = negated ? words[at + 1] : first;
  if (name === undefined || !NAME.test(name.text) || isSign(name)) return undefined;
  const next = negated ? at + 2 : at + 1;
  if (words[next]?.text === "is") return negated ? undefined : isOneOf(name, words, next + 1);
  const how = COMPARISONS.find((one) => one === `${words[next]?.text} ${words[next + 1]?.text}`);
  if (how !== undefined) return negated ? undefined : compared(name, how, words, next + 2);
  return { condition: { kind: "so", name, not: negated }, next };
}

function isSign({ text }: Word): boolean {
  return text === "and" || text === "or" || text === "is" || text === "not";
}

function isOneOf(name: Word, words: readonly Word[], at: number): Read | undefined {
  const not = words[at]?.text === "not";
  let next = not ? at + 1 : at;
  const values: Word[] = [];
  let reach: "worse" | "better" | undefined;
  while (true) {
    const value = words[next];
    if (value === undefined || !NAME.test(value.text) || isSign(value)) return undefined;
    values.push(value);
    next += 1;
    const after = words[next + 1];
    if (words[next]?.text !== "or" || after === undefined) break;
    if (after.text === "worse" || after.text === "better") {
      reach = after.text;
      next += 2;
      break;
    }
    // What is followed by a verb, or denied, begins a condition of its own.
    const verb = `${words[next + 2]?.text} ${words[next + 3]?.text}`;
    if (after.text === "not" || words[next + 2]?.text === "is" || COMPARISONS.some((one) => one === verb)) break;
    next += 1;
  }
  return { condition: { kind: "is", name, not, values, ...(reach === undefined ? {} : { reach }) }, next };
}

function compared(name: Word, how: (typeof COMPARISONS)[number], words: readonly Word[], at: number): Read | undefined {
  let next = at;
  while (next < words.length && words[next]?.text !== "and" && words[next]?.text !== "or") next += 1;
  const [first, last] = [words[at], words[next - 1]];
  if (first === undefined || last === undefined || next === at) return undefined;
  const text = words
    .slice(at, next)
    .map((word) => word.text)
    .join(" ");
  return {
    condition: { kind: "compare", name, how, quantity: { text, at: { ...first.at, to: last.at.to } } },
    next,
  };
}
