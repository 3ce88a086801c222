import { type FactOf, UNIT_SYMBOL, type Unit, type Worked } from "@good-grounds/core";
import type { Word } from "../document/condition.ts";
import type { Amount, Fact, Link, Recorded } from "../document/document.ts";
import { nearTo } from "../text/near.ts";
import { isYesNo } from "./expression.ts";
import type { Scope } from "./scope.ts";

const BY_SYMBOL: ReadonlyMap<string, Unit> = new Map(
  Object.entries(UNIT_SYMBOL)
    .filter(([, symbol]) => symbol !== "")
    .map(([unit, symbol]) => [symbol, unit as Unit]),
);

/** A fact of a text as the reasoner asks it; `given` narrows its values. */
export function factOf(node: Fact | Amount, scope: Scope, given: readonly string[] | undefined): FactOf | undefined {
  const { question: asks, effort } = node;
  const within = [`${node.kind} ${node.name.text}`];
  const shared = { asks, effort, ...links(node, scope, within, given) };
  if (node.kind === "amount") {
    const unit = BY_SYMBOL.get(node.unit.text);
    if (unit === undefined)
      return scope.fault(
        node.unit,
        `"${node.unit.text}" is no unit`,
        `one of ${[...BY_SYMBOL.keys()].join(", ")}`,
        "write its symbol",
        within,
      );
    return Object.freeze({ kind: "quantity", name: node.called, unit, worse: node.worse ?? null, ...shared });
  }
  const clauses = Object.fromEntries(node.values.map(({ name, clause }) => [name.text, clause]));
  if (isYesNo(node))
    return Object.freeze({
      kind: "yes-no",
      yes: clauses["yes"] ?? "",
      no: clauses["no"] ?? "",
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
    ...(recorded === undefined ? {} : { recorded: recordedOf(recorded, node, scope, within) }),
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

/** Where nothing is said of the values they are the same as those of the fact. */
function recordedOf({ property, gives }: Recorded, node: Fact | Amount, scope: Scope, within: readonly string[]) {
  for (const { values } of gives) for (const value of values) checkValue(value, node, scope, within);
  const same =
    node.kind === "fact" && gives.length === 0 ? node.values.map(({ name }) => [name.text, name.text] as const) : [];
  const pairs = gives.map(
    ({ recorded, values }) => [recorded.text, values.map(({ text }) => text).join(" | ")] as const,
  );
  return { property: property.text, gives: Object.fromEntries([...same, ...pairs]) };
}

/** Tells a value that the fact does not have. */
export function checkValue(value: Word, node: Fact | Amount, scope: Scope, within: readonly string[]): void {
  if (node.kind === "amount") return;
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
