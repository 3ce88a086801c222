// Reads what a TypeScript file imports. TypeScript 7 has no JavaScript API and esbuild drops type imports before it
// reports them, so this is a small reader of its own: blank out what is not code, then look for imports.

// After one of these words, or after an operator, a slash starts a regular expression; otherwise it divides.
const wordsBeforeRegex = new Set(["return", "typeof", "case", "in", "of", "delete", "void", "throw", "new", "await"]);
const wordCharacter = /[\p{ID_Continue}$]/u;

/** Offset just after the next `mark`, or the end of the text. */
function endOf(text, mark, from) {
  const found = text.indexOf(mark, from);
  return found === -1 ? text.length : found + mark.length;
}

/** Offset of the quote that ends the string which begins at `at`, or of the end of its line. */
function closingQuote(text, at) {
  let end = at + 1;
  while (end < text.length && text[end] !== text[at] && text[end] !== "\n") end += text[end] === "\\" ? 2 : 1;
  return end;
}

/** Offset of the backtick or `${` that ends the piece of a template which begins at `from`. */
function endOfTemplatePiece(text, from) {
  let end = from + 1;
  while (end < text.length && text[end] !== "`" && !text.startsWith("${", end)) end += text[end] === "\\" ? 2 : 1;
  return end;
}

/** Offset just after the slash that ends the regular expression which begins at `at`. */
function endOfRegex(text, at) {
  let end = at + 1;
  let inClass = false;
  while (end < text.length && text[end] !== "\n" && (inClass || text[end] !== "/")) {
    if (text[end] === "\\") end++;
    else if (text[end] === "[") inClass = true;
    else if (text[end] === "]") inClass = false;
    end++;
  }
  return end + 1;
}

function endOfWord(text, at) {
  let end = at + 1;
  while (end < text.length && wordCharacter.test(text[end])) end++;
  return end;
}

/** Whether a slash after this word or sign starts a regular expression. */
function regexFollows(last) {
  return last === "" || wordsBeforeRegex.has(last) || !/[\p{ID_Continue}$)\]}"'`]$/u.test(last);
}

/**
 * Blanks out comments, regular expressions and the insides of strings, keeping every offset and line break.
 * `strings` holds what was blanked, by the offset of its opening quote.
 */
export function mask(text) {
  const code = text.split("");
  const strings = new Map();
  const openTemplates = []; // for each `${` we are inside: the depth of braces at which its `}` stands
  let depth = 0;
  let last = ""; // the last word or sign, to tell a division from a regular expression
  let at = 0;

  const blank = (from, to) => {
    for (let i = from; i < to && i < code.length; i++) if (code[i] !== "\n") code[i] = " ";
    return to;
  };
  const quoted = () => {
    const end = closingQuote(text, at);
    strings.set(at, text.slice(at + 1, end));
    return blank(at + 1, end) + 1;
  };
  const template = () => {
    const end = endOfTemplatePiece(text, at);
    blank(at + 1, end);
    if (text[end] === "`") {
      if (text[at] === "`") strings.set(at, text.slice(at + 1, end));
      return end + 1;
    }
    openTemplates.push(depth);
    return end + 2;
  };

  while (at < text.length) {
    const sign = text[at];
    if (text.startsWith("//", at)) {
      at = blank(at, endOf(text, "\n", at));
    } else if (text.startsWith("/*", at)) {
      at = blank(at, endOf(text, "*/", at + 2));
    } else if (/\s/.test(sign)) {
      at++;
    } else if (wordCharacter.test(sign)) {
      const end = endOfWord(text, at);
      last = text.slice(at, end);
      at = end;
    } else if (sign === '"' || sign === "'") {
      at = quoted();
      last = sign;
    } else if (sign === "`" || (sign === "}" && openTemplates.at(-1) === depth)) {
      if (sign === "}") openTemplates.pop();
      at = template();
      last = text[at - 1];
    } else if (sign === "/" && regexFollows(last)) {
      at = blank(at, endOfRegex(text, at));
      last = ")";
    } else {
      if (sign === "{") depth++;
      if (sign === "}") depth--;
      last = sign;
      at++;
    }
  }
  return { code: code.join(""), strings };
}

export function lineOf(text, offset) {
  let line = 1;
  for (let i = text.indexOf("\n"); i !== -1 && i < offset; i = text.indexOf("\n", i + 1)) line++;
  return line;
}

const names = "[\\p{ID_Continue}$\\s,{}*]";
const forms = [
  // import "x"; import a, { b } from "x"; import type { A } from "x"
  { pattern: /(?<![.\p{ID_Continue}$])import\s*(?=["'])/gu },
  {
    pattern: new RegExp(
      `(?<![.\\p{ID_Continue}$])import\\b(?<typed>\\s+type\\b(?!\\s*(?:,|from\\s*["'])))?${names}*?\\bfrom\\s*(?=["'])`,
      "gu",
    ),
  },
  // export * from "x"; export { a } from "x"; export type { A } from "x"
  {
    pattern: new RegExp(
      `(?<![.\\p{ID_Continue}$])export\\b(?<typed>\\s+type\\b)?\\s*[{*]${names}*?\\bfrom\\s*(?=["'])`,
      "gu",
    ),
  },
  // import("x"), also as a type; require("x"); a name that is put together while running cannot be checked
  { pattern: /(?<![.\p{ID_Continue}$])(?:import|require)\s*\(\s*/gu },
];

/** Every import in the file: `{ specifier, line, typeOnly }`; `specifier` is undefined where it is not a plain string. */
export function importsOf(text, { code, strings } = mask(text)) {
  const found = [];
  for (const { pattern } of forms) {
    for (const match of code.matchAll(pattern)) {
      const quote = match.index + match[0].length;
      found.push({
        specifier: strings.get(quote),
        line: lineOf(text, quote),
        typeOnly: match.groups?.typed !== undefined,
      });
    }
  }
  return found.sort((a, b) => a.line - b.line);
}
