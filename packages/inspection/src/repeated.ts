import type { Issue, Path } from "@good-grounds/core";

interface Frame {
  /** Names met so far in an object; undefined in a list. */
  readonly names: Set<string> | undefined;
  step: string | number;
}

const [QUOTE, COMMA, COLON, BACKSLASH] = [0x22, 0x2c, 0x3a, 0x5c];
const [OPEN_OBJECT, CLOSE_OBJECT, OPEN_LIST, CLOSE_LIST] = [0x7b, 0x7d, 0x5b, 0x5d];

/**
 * Names that stand twice in one object of a JSON text. JSON keeps the last and drops the others without a word: a reading
 * would vanish. The text must be JSON already, so that only strings and the signs between them matter.
 */
export function repeatedMembers(text: string): readonly Issue[] {
  const issues: Issue[] = [];
  const frames: Frame[] = [];
  let frame: Frame | undefined;
  let from = 0;
  let to = 0;
  for (let at = 0; at < text.length; at++) {
    switch (text.charCodeAt(at)) {
      case QUOTE:
        from = at;
        to = closingQuote(text, at);
        at = to;
        break;
      case OPEN_OBJECT:
      case OPEN_LIST:
        frame = text[at] === "{" ? { names: new Set(), step: "" } : { names: undefined, step: 0 };
        frames.push(frame);
        break;
      case CLOSE_OBJECT:
      case CLOSE_LIST:
        frames.pop();
        frame = frames.at(-1);
        break;
      case COMMA:
        if (typeof frame?.step === "number") frame.step += 1;
        break;
      case COLON: {
        if (frame?.names === undefined) break;
        const name = nameOf(text.slice(from, to + 1));
        frame.step = name;
        if (frame.names.has(name)) issues.push(repeated(frames.map(({ step }) => step)));
        frame.names.add(name);
      }
    }
  }
  return issues;
}

/**
 * How many members the objects of a JSON text have together: the strings before a colon. The text must be JSON already. It
 * goes from string to string, so that what lies between, indents above all, costs next to nothing.
 */
export function membersIn(text: string): number {
  let members = 0;
  for (let at = text.indexOf('"'); at >= 0; at = text.indexOf('"', at)) {
    at = closingQuote(text, at) + 1;
    let code = text.charCodeAt(at);
    while (code === 0x20 || code === 0x0a || code === 0x0d || code === 0x09) code = text.charCodeAt(++at);
    if (code === COLON) members += 1;
  }
  return members;
}

/** A name may be written with escapes: names are compared by what they mean. */
function nameOf(string: string): string {
  return string.includes("\\") ? JSON.parse(string) : string.slice(1, -1);
}

/** Where the string that opens at `from` closes: the first quote with an even number of backslashes before it. */
function closingQuote(text: string, from: number): number {
  for (let quote = text.indexOf('"', from + 1); ; quote = text.indexOf('"', quote + 1)) {
    if (quote < 0) throw new Error("a string does not close in text that was taken for JSON");
    let backslashes = 0;
    while (text.charCodeAt(quote - 1 - backslashes) === BACKSLASH) backslashes += 1;
    if (backslashes % 2 === 0) return quote;
  }
}

function repeated(path: Path): Issue {
  return {
    code: "repeated-member",
    path,
    found: "the same name twice in one object",
    expected: "each name once",
    advice: "keep the one that is right and remove the other; reading on would drop one of them silently",
  };
}
