import { CHECKS } from "@good-grounds/computations";
import { type Finding, isKnown, missingOf, weakestBasis } from "@good-grounds/core";
import {
  bandWords,
  comparisonWords,
  decidingComparison,
  decidingFacts,
  isExpected,
  marginBar,
  marginWords,
  RELATION,
  sides,
  valueWords,
  verdictOf,
} from "@good-grounds/report";
import type { FindingView } from "../view.ts";

const TITLES: ReadonlyMap<string, string> = new Map(CHECKS.map(({ id, title }) => [id, title]));

/** A finding as screens show it. */
export function findingView(finding: Finding): FindingView {
  const { check, judgement, remarks } = finding;
  const { verdict } = judgement;
  const compared = decidingComparison(judgement);
  const [left, limit] = compared === undefined ? [] : sides(compared);
  const isBounded = compared?.relation === "at-most" || compared?.relation === "at-least";
  const isCompared = compared !== undefined && left !== undefined && isKnown(left) && verdict !== "not-known";
  const words = isCompared && verdict !== "not-applicable" ? comparisonWords(compared) : "";
  return {
    check,
    title: TITLES.get(check) ?? check,
    verdict,
    verdictWord: verdictOf(judgement),
    expected: isExpected(judgement.grade, verdict),
    words: words === "" && verdict !== "not-known" ? decidingFacts(judgement) : words,
    limit:
      isBounded && limit !== undefined && isKnown(limit) ? `${RELATION[compared.relation]} ${valueWords(limit)}` : "",
    margin: isCompared && Number.isFinite(judgement.margin) ? judgement.margin : null,
    marginWords: isCompared ? marginWords(compared) : "",
    bar: isCompared && limit !== undefined && isKnown(limit) && limit.value > 0 ? barOf(compared, verdict) : "",
    missing: verdict === "not-known" ? [...new Set(missingNames(finding))] : [],
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
