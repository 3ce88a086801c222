import type { Evidence, Fact, Ground, Judgement, Path, Unit } from "@good-grounds/core";
import { BASIS, OPERATION, RELATION, WORDS } from "../locales/en.ts";
import { SILENCE } from "../locales/labels.ts";
import { bandWords, valueWords } from "./figure.ts";
import { spoken } from "./spoken.ts";
import { verdictOf } from "./verdict.ts";

/** One line of an argument: how deep it stands, how it is tagged, and what it says. */
export interface ArgumentLine {
  readonly depth: number;
  /** The tag of a leaf, or the verdict of a judgement; computed lines have their own tag. */
  readonly tag: string;
  readonly words: string;
  /** Source or place, set apart. */
  readonly note: string;
  readonly leaf: boolean;
}

/**
 * The argument of a judgement as lines, parents before children. A part that several lines rest on is written out once
 * and referred to afterwards.
 */
export function argumentLines(root: Ground, place: (path: Path) => string): readonly ArgumentLine[] {
  const lines: ArgumentLine[] = [];
  const written = new Set<Ground>();
  const waiting: { node: Ground; depth: number }[] = [{ node: root, depth: 0 }];
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    const { node, depth } = next;
    const again = written.has(node) && "from" in node && node.from.length > 0;
    written.add(node);
    const line = lineOf(node, place);
    lines.push({ ...line, depth, words: again ? `${line.words} (${WORDS.asAbove})` : line.words });
    if (again || !("from" in node)) continue;
    for (let i = node.from.length - 1; i >= 0; i--) waiting.push({ node: node.from[i] as Ground, depth: depth + 1 });
  }
  return lines;
}

type Line = Omit<ArgumentLine, "depth">;

function lineOf(node: Ground, place: (path: Path) => string): Line {
  switch (node.kind) {
    case "compared":
    case "combined":
    case "settled":
      return judgementLine(node);
    case "fact":
    case "fact-not-known":
      return factLine(node, place);
    default:
      return evidenceLine(node, place);
  }
}

function judgementLine(node: Judgement): Line {
  const tag = verdictOf(node);
  if (node.kind === "compared") {
    const [left, limit] = node.from as readonly Evidence<Unit>[];
    const symbols =
      left === undefined || limit === undefined
        ? ""
        : `: ${symbolOf(left)} ${RELATION[node.relation]} ${symbolOf(limit)}`;
    return { tag, words: `${node.matter.name}${symbols}`, note: "", leaf: false };
  }
  if (node.kind === "settled") {
    return {
      tag,
      words: node.why === "" ? node.matter.name : `${node.matter.name}: ${node.why}`,
      note: "",
      leaf: false,
    };
  }
  return {
    tag,
    words: `${node.matter.name} (${node.rule === "all" ? "every part" : "one part is enough"})`,
    note: "",
    leaf: false,
  };
}

function factLine(node: Fact<string | boolean>, place: (path: Path) => string): Line {
  if (node.kind === "fact-not-known") {
    const { path, silence, reason } = node.detail;
    return {
      tag: WORDS.notKnown,
      words: node.matter.name,
      note: noteOf(SILENCE[silence], reason, place(path)),
      leaf: true,
    };
  }
  const word = node.word === true ? WORDS.yes : node.word === false ? WORDS.no : textOf(node.word, node.detail.text);
  const shown =
    typeof node.word === "boolean" && node.detail.text !== String(node.word) && node.detail.text !== word
      ? `${word}, ${node.detail.text}`
      : word;
  return { tag: WORDS[node.how], words: `${node.matter.name}: ${shown}`, note: place(node.detail.path), leaf: true };
}

/** A word that stands for itself is said as a reader would; what was written in its place stays as written. */
function textOf(word: string, text: string): string {
  return text === word ? spoken(word) : text;
}

function evidenceLine(node: Evidence<Unit>, place: (path: Path) => string): Line {
  const { term } = node;
  const name = term.symbol === "" ? term.name : `${term.symbol}, ${term.name}`;
  const band = bandWords(node);
  const value = band === "" ? valueWords(node) : `${valueWords(node)} (${band})`;
  switch (node.kind) {
    case "seen":
      return { tag: WORDS.seen, words: `${name}: ${value}`, note: place(node.detail.path), leaf: true };
    case "measured": {
      const { accuracy, grade } = node.detail;
      const how = accuracy ?? (grade === "usual" ? WORDS.takenAsUsual : WORDS.takenAsShown);
      return {
        tag: WORDS.measured,
        words: `${name}: ${value}`,
        note: noteOf(how, place(node.detail.path)),
        leaf: true,
      };
    }
    case "published": {
      const { source, row } = node.detail;
      return {
        tag: WORDS.published,
        words: `${name}: ${value}`,
        note: noteOf(source.work, row, BASIS[source.basis], source.doubt ?? ""),
        leaf: true,
      };
    }
    case "expected":
    case "assumed": {
      const { why, source } = node.detail;
      return {
        tag: WORDS[node.kind],
        words: `${name}: ${value}`,
        note: noteOf(why, source === undefined ? "" : BASIS[source.basis]),
        leaf: true,
      };
    }
    case "not-known": {
      const { path, silence, reason } = node.detail;
      return {
        tag: WORDS.notKnown,
        words: name,
        note: noteOf(
          SILENCE[silence],
          silence === "not-tabulated" ? spoken(reason) : reason,
          path.length === 0 ? "" : place(path),
        ),
        leaf: true,
      };
    }
    case "computed":
      return { tag: WORDS.computed, words: `${formulaOf(node)} = ${value}`, note: "", leaf: false };
    case "lacking":
      return { tag: WORDS.notKnown, words: formulaOf(node), note: "", leaf: false };
  }
}

function formulaOf(node: Extract<Evidence<Unit>, { kind: "computed" | "lacking" }>): string {
  const parts = node.from.map((part) => ("term" in part ? symbolOf(part) : "matter" in part ? part.matter.name : ""));
  return `${symbolOf(node)} = ${OPERATION[node.detail](parts)}`;
}

function symbolOf(evidence: Evidence<Unit>): string {
  return evidence.term.symbol || evidence.term.name;
}

function noteOf(...parts: readonly string[]): string {
  return parts.filter((part) => part !== "").join("; ");
}
