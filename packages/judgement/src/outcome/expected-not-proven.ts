import { CHECKS } from "@good-grounds/computations";
import type { Finding, Outcome, Weighing } from "@good-grounds/core";

const TITLES: ReadonlyMap<string, string> = new Map(CHECKS.map(({ id, title }) => [id, title]));

/**
 * What a reader has to know of checks that are met by what is expected and not by what is proven: one remark a check, with
 * how many places it is, and what would prove it. They are no open points: nothing shows that they are not met.
 */
export function expectedNotProven({ supply, boards, circuits }: Weighing): Outcome["remarks"] {
  const found = new Map<string, Finding[]>();
  for (const finding of [...supply, ...boards.flat(), ...circuits.flat()]) {
    const { verdict, grade } = finding.judgement;
    if (verdict === "met" && grade === "expected")
      found.set(finding.check, [...(found.get(finding.check) ?? []), finding]);
  }
  return [...found].map(([check, findings]) => {
    const proof = [...new Set(findings.flatMap(({ remarks }) => remarks.map(({ words }) => words)))].join(" ");
    const places = `${findings.length} ${findings.length === 1 ? "place" : "places"}`;
    return { code: "expected-not-proven", words: `${TITLES.get(check) ?? check}, ${places}: ${proof}` };
  });
}
