import type { FactOf, Worked } from "@good-grounds/core";
import type { Word } from "../document/condition.ts";
import type { Amount, Fact, Link, Recorded } from "../document/document.ts";
import { nearTo } from "../text/near.ts";
import { isYesNo } from "./expression.ts";
import { isWordOfConditions } from "./name.ts";
import { checkAmount, unitOf } from "./quantity.ts";
import type { Scope } from "./scope.ts";

/** As many values as the reasoner keeps apart. */
const MOST_VALUES = 30;

/** A fact of a text as the reasoner asks it; `given` narrows its values. */
export function factOf(node: Fact | Amount, scope: Scope, given: readonly string[] | undefined): FactOf | undefined {
  const { question: asks, effort } = node;
  const within = [`${node.kind} ${node.name.text}`];
  const shared = { asks, effort, ...links(node, scope, within, given) };
  if (node.kind === "amount") {
    const unit = unitOf(node, scope, within);
    if (unit === undefined) return undefined;
    return Object.freeze({ kind: "quantity", name: node.called, unit, worse: node.worse ?? null, ...shared });
  }
  checkNames(node.values, node.name, scope, within);
  for (const { values } of node.alike) for (const value of values) checkValue(value, node, scope, within);
  const clauses = Object.fromEntries(node.values.map(({ name, clause }) => [name.text, clause]));
  if (isYesNo(node))
    return Object.freeze({
      kind: "yes-no",
      yes: clauses.yes ?? "",
      no: clauses.no ?? "",
      worse: node.inNoOrder ? null : node.values[1]?.name.text === "yes" ? "yes" : "no",
      ...shared,
    });
  const values =
    given === undefined
      ? clauses
      : Object.fromEntries(Object.entries(clauses).filter(([value]) => given.includes(value)));
  const formerly = Object.fromEntries(node.retired.map(({ value, readAs }) => [value.text, readAs.text]));
  for (const { readAs } of node.retired) checkValue(readAs, node, scope, within);
  return Object.freeze({
    kind: "choice",
    ordered: !node.inNoOrder,
    values,
    ...(node.retired.length === 0 ? {} : { formerly }),
    ...shared,
  });
}

function links(node: Fact | Amount, scope: Scope, within: readonly string[], given: readonly string[] | undefined) {
  const { answered, recorded } = node;
  return {
    ...(answered === undefined ? {} : { worked: workedOf(answered, node, scope, within, given) }),
    ...(recorded === undefined ? {} : { recorded: recordedOf(recorded, node, scope, within, given) }),
  };
}

/** A finding says no more than what the subject itself leaves open. */
function workedOf(
  link: Link,
  node: Fact | Amount,
  scope: Scope,
  within: readonly string[],
  given: readonly string[] | undefined,
): Worked {
  for (const value of [...link.met, ...link.notMet]) checkValue(value, node, scope, within);
  const part = ({ by, matter }: Pick<Link, "by" | "matter">) => ({
    by: by.text,
    ...(matter === undefined ? {} : { matter: matter.text }),
  });
  const left = (values: readonly Word[]) =>
    values.map(({ text }) => text).filter((value) => given === undefined || given.includes(value));
  const [met, notMet] = [left(link.met), left(link.notMet)];
  return {
    ...part(link),
    ...(link.and.length === 0 ? {} : { and: link.and.map(part) }),
    ...(met.length === 0 ? {} : { met: met.join(" | ") }),
    ...(notMet.length === 0 ? {} : { notMet: notMet.join(" | ") }),
    ...(link.findings === undefined ? {} : { findings: link.findings }),
  };
}

/**
 * Where nothing is said of the values they are the same as those of the fact. What the subject itself rules out is no
 * answer here; that the file has it all the same is found where the subject is held against the file.
 */
function recordedOf(
  { property, gives }: Recorded,
  node: Fact | Amount,
  scope: Scope,
  within: readonly string[],
  given: readonly string[] | undefined,
) {
  for (const { values } of gives) for (const value of values) checkValue(value, node, scope, within);
  const same =
    node.kind === "fact" && gives.length === 0 ? node.values.map(({ name }) => [name.text, [name.text]] as const) : [];
  const pairs = gives.map(({ recorded, values }) => [recorded.text, values.map(({ text }) => text)] as const);
  const left = [...same, ...pairs].flatMap(([recorded, values]) => {
    const open = values.filter((value) => given === undefined || given.includes(value));
    return open.length > 0 ? [[recorded, open.join(" | ")] as const] : [];
  });
  return { property: property.text, gives: Object.fromEntries(left) };
}

/** Tells a value that the fact does not have. */
export function checkValue(value: Word, node: Fact | Amount, scope: Scope, within: readonly string[]): void {
  if (node.kind === "amount") {
    checkAmount(value, node, scope, within);
    return;
  }
  const there = node.values.map(({ name }) => name.text);
  if (there.includes(value.text)) return;
  const [near] = nearTo(value.text, there);
  scope.fault(
    value,
    `"${value.text}" is no value of "${node.name.text}"`,
    `one of ${there.join(", ")}`,
    near === undefined ? "write one of these" : `is it "${near}"?`,
    within,
  );
}

/** Tells values, or positions, that go by the same name or by one that conditions cannot speak of, and more of them than are kept apart. */
export function checkNames(
  values: readonly { readonly name: Word }[],
  owner: Word,
  scope: Scope,
  within: readonly string[],
  isPosition = false,
): void {
  if (values.length > MOST_VALUES)
    scope.fault(owner, `${values.length} values`, `at most ${MOST_VALUES}`, "ask for it in two facts", within);
  const seen = new Set<string>();
  for (const { name } of values) {
    if (isWordOfConditions(name.text, isPosition))
      scope.fault(
        name,
        `"${name.text}" as a value`,
        "a word that conditions are not made of",
        "say in two words what is so",
        within,
      );
    if (seen.has(name.text))
      scope.fault(name, `"${name.text}" a second time`, "each value once", "take one of the two away", within);
    seen.add(name.text);
  }
}
