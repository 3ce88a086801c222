import { CHECKS } from "@good-grounds/computations";
import { type Finding, isKnown, missingOf, nodesOf, type Path, weakestBasis } from "@good-grounds/core";
import {
  bandWords,
  comparisonWords,
  decidingComparison,
  decidingFacts,
  marginBar,
  marginWords,
  RELATION,
  sides,
  valueWords,
} from "@good-grounds/report";
import type { Filled } from "../draft.ts";
import type { FindingView } from "../protocol.ts";

const TITLES: ReadonlyMap<string, string> = new Map(CHECKS.map(({ id, title }) => [id, title]));

/** Names of what is missing although something was filled in for it: a verdict that rests on it is none. */
export function restsOn({ judgement }: Finding, filled: readonly Filled[]): readonly string[] {
  if (filled.length === 0) return [];
  const names = new Set<string>();
  for (const node of nodesOf(judgement)) {
    const path = "detail" in node && typeof node.detail === "object" && "path" in node.detail ? node.detail.path : [];
    const found = filled.find((one) => isSame(one.path, path));
    if (found?.words !== undefined) names.add(found.words);
  }
  return [...names];
}

function isSame(a: Path, b: Path): boolean {
  return a.length === b.length && a.every((step, i) => step === b[i]);
}

/** A finding as screens show it; `unsure` names what it rests on that is missing. */
export function findingView(finding: Finding, unsure: readonly string[]): FindingView {
  const { check, judgement, remarks } = finding;
  const verdict = unsure.length > 0 ? "not-known" : judgement.verdict;
  const compared = decidingComparison(judgement);
  const [left, limit] = compared === undefined ? [] : sides(compared);
  const isBounded = compared?.relation === "at-most" || compared?.relation === "at-least";
  const isCompared = compared !== undefined && left !== undefined && isKnown(left) && verdict !== "not-known";
  const words = isCompared && verdict !== "not-applicable" ? comparisonWords(compared) : "";
  return {
    check,
    title: TITLES.get(check) ?? check,
    verdict,
    words: words === "" && verdict !== "not-known" ? decidingFacts(judgement) : words,
    limit:
      isBounded && limit !== undefined && isKnown(limit) ? `${RELATION[compared.relation]} ${valueWords(limit)}` : "",
    margin: isCompared && Number.isFinite(judgement.margin) ? judgement.margin : null,
    marginWords: isCompared ? marginWords(compared) : "",
    bar: isCompared && limit !== undefined && isKnown(limit) && limit.value > 0 ? barOf(compared, verdict) : "",
    missing: [...new Set([...unsure, ...(verdict === "not-known" ? missingNames(finding) : [])])],
    remarks: remarks.map((remark) => remark.words),
    memory: weakestBasis(judgement) === "memory",
  };
}

function barOf(compared: Parameters<typeof sides>[0], verdict: FindingView["verdict"]): string {
  const [left, limit] = sides(compared);
  const band = bandWords(left);
  return marginBar({
    value: left.value,
    low: left.low,
    high: left.high,
    limit: limit.value,
    limitLow: limit.low,
    limitHigh: limit.high,
    relation: compared.relation,
    verdict,
    words: `${comparisonWords(compared)}${band === "" ? "" : `; ${band}`}`,
  });
}

function missingNames({ judgement }: Finding): readonly string[] {
  return missingOf(judgement).map((leaf) => {
    const name = leaf.kind === "not-known" ? leaf.term.name : leaf.matter.name;
    return leaf.detail.reason === "" ? name : `${name} (${leaf.detail.reason})`;
  });
}
