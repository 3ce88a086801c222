import { bandOf } from "../grounds/errors.ts";
import type { Evidence, Fact, Silence } from "../grounds/evidence.ts";
import { fact, factNotKnown, seen, seenBetween } from "../grounds/leaves.ts";
import type { Path } from "../issue/issue.ts";
import type { Unit } from "../quantity/unit.ts";
import { isFault, parseWritten } from "../quantity/written.ts";
import { matter, term } from "../terms/term.ts";
import type { Compiled } from "./compile.ts";
import type { FactOf, QuantityFact } from "./fact.ts";

/** What is said of a fact: a value, several of which one is true ("a | b"), a quantity or a range of it ("10 mm to 20 mm"), or why it is not known. */
export type Answer = boolean | string | { readonly notKnown: Silence; readonly reason: string };

/** Why an answer cannot be used. */
export interface AnswerFault {
  readonly code: "unknown-fact" | "unknown-point" | "not-a-value" | "not-a-quantity" | "backwards";
  readonly name: string;
  readonly found: string;
  readonly expected: readonly string[];
  /** Set where the value is a position on a contested point rather than a fact. */
  readonly isPosition?: true;
}

/** The ground of a fact: what was seen or measured, or that it is not known. */
export type FactGround = Fact<string | boolean> | Evidence<Unit>;

/** What is known of every variable of a subject, by its number in the compiled subject. */
export interface Knowledge {
  /** Bit set of the cells still possible. */
  readonly masks: readonly number[];
  /** Facts that cannot be settled within the agreed extent, by number. */
  readonly beyond: ReadonlySet<number>;
  /** Facts that something was said about. */
  readonly grounds: ReadonlyMap<string, FactGround>;
}

export interface Answers {
  readonly facts: Readonly<Record<string, Answer>>;
  /** Positions by contested point; the more usual one is taken where none is named. */
  readonly positions?: Readonly<Record<string, string>>;
}

/** Reads answers into knowledge. Everything wrong is reported at once; what is wrong counts as not said. */
export function readAnswers(
  compiled: Compiled,
  answers: Answers,
  path: Path = [],
): { readonly knowledge: Knowledge; readonly faults: readonly AnswerFault[] } {
  const { subject, variables, index } = compiled;
  const masks = variables.map(({ kind, cells }) => (kind === "point" ? 1 : 2 ** cells.values.length - 1));
  const beyond = new Set<number>();
  const grounds = new Map<string, FactGround>();
  const faults: AnswerFault[] = [];
  for (const [name, answer] of Object.entries(answers.facts)) {
    const variable = index.get(`fact ${name}`);
    const about = Object.hasOwn(subject.facts, name) ? subject.facts[name] : undefined;
    if (variable === undefined || about === undefined) {
      faults.push({ code: "unknown-fact", name, found: shown(name), expected: Object.keys(subject.facts) });
      continue;
    }
    const read = readAnswer(name, about, answer, [...path, name]);
    if ("code" in read) {
      faults.push(read);
      continue;
    }
    grounds.set(name, read.ground);
    if (read.silence === "limited") beyond.add(variable);
    const { cells } = variables[variable] as Compiled["variables"][number];
    const numbers =
      read.between === undefined
        ? read.values.map((value) => cells.values.indexOf(value))
        : (cells.between?.(...read.between) ?? []);
    if (numbers.length > 0) masks[variable] = numbers.reduce((mask, number) => mask | (1 << number), 0);
  }
  for (const [name, position] of Object.entries(answers.positions ?? {})) {
    const variable = index.get(`point ${name}`);
    if (variable === undefined) {
      faults.push({ code: "unknown-point", name, found: shown(name), expected: Object.keys(subject.contested) });
      continue;
    }
    const { values } = (variables[variable] as Compiled["variables"][number]).cells;
    const number = values.indexOf(position);
    if (number < 0)
      faults.push({ code: "not-a-value", name, found: shown(position), expected: values, isPosition: true });
    else masks[variable] = 1 << number;
  }
  return { knowledge: { masks, beyond, grounds }, faults };
}

/** As much of what was written as a message shows. */
function shown(text: string): string {
  return text.length > 80 ? `${text.slice(0, 79)}…` : text;
}

interface Read {
  readonly ground: FactGround;
  readonly values: readonly string[];
  readonly between?: readonly [number, number];
  readonly silence?: Silence;
}

function readAnswer(name: string, about: FactOf, answer: Answer, path: Path): Read | AnswerFault {
  if (typeof answer === "object") {
    const subject = matter(name, about.asks);
    return {
      ground: factNotKnown(subject, path, answer.notKnown, answer.reason),
      values: [],
      silence: answer.notKnown,
    };
  }
  return about.kind === "quantity" ? readQuantity(name, about, answer, path) : readWords(name, about, answer, path);
}

function readWords(
  name: string,
  about: Exclude<FactOf, QuantityFact>,
  answer: boolean | string,
  path: Path,
): Read | AnswerFault {
  const allowed = about.kind === "yes-no" ? ["yes", "no"] : Object.keys(about.values);
  const text = answer === true ? "yes" : answer === false ? "no" : answer;
  const formerly = about.kind === "choice" ? (about.formerly ?? {}) : {};
  const values = text.split("|").map((part) => {
    const word = part.trim().toLowerCase();
    return Object.hasOwn(formerly, word) ? (formerly[word] as string).toLowerCase() : word;
  });
  const matched = values.map((value) => allowed.find((one) => one.toLowerCase() === value));
  if (matched.some((value) => value === undefined) || matched.length === 0)
    return { code: "not-a-value", name, found: shown(text), expected: allowed };
  const words = matched as readonly string[];
  const clause = (value: string) =>
    about.kind === "yes-no" ? about[value as "yes" | "no"] : (about.values[value] as string);
  return {
    ground: fact(matter(name, about.asks), words.join(" | "), path, words.map(clause).join(", or ")),
    values: words,
  };
}

function readQuantity(name: string, about: QuantityFact, answer: boolean | string, path: Path): Read | AnswerFault {
  const wrong = (code: AnswerFault["code"]): AnswerFault => ({
    code,
    name,
    found: shown(String(answer)),
    expected: [about.unit],
  });
  if (typeof answer === "boolean") return wrong("not-a-quantity");
  const parts = answer.split(/ to |\.\./);
  const written = parts.map((part) => parseWritten(part.trim(), about.unit));
  const [from, to] = written;
  if (from === undefined || isFault(from) || written.length > 2) return wrong("not-a-quantity");
  // Nothing that is asked for can be less than nothing but a temperature.
  if (from.value < 0 && about.unit !== "celsius") return wrong("not-a-quantity");
  const subject = term(name, about.name, "", about.unit);
  if (to === undefined) {
    const [low, high] = bandOf(from, []);
    return { ground: seen(subject, from, path), values: [], between: [low, high] };
  }
  if (isFault(to) || from.bound !== "exact" || to.bound !== "exact") return wrong("not-a-quantity");
  if (from.value > to.value) return wrong("backwards");
  return {
    ground: seenBetween(subject, from.value, to.value, answer, path),
    values: [],
    between: [from.value, to.value],
  };
}
