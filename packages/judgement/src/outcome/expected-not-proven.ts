import { CHECKS } from "@good-grounds/computations";
import type { Finding, Outcome, Weighing } from "@good-grounds/core";

const TITLES: ReadonlyMap<string, string> = new Map(CHECKS.map(({ id, title }) => [id, title]));

/** What would prove it, of checks that say nothing of it themselves. */
const PROVED_BY: Readonly<Record<string, string>> = Object.freeze({
  "supply-voltage":
    "As read it is, and the doubt of the meter reaches past them. A record of the distributor over days would prove it.",
  "external-impedance":
    "As read it is, and the doubt of the meter reaches past that. A value declared by the distributor would prove it.",
  "zs-agreement":
    "Another path, or another point of the ring, explains what was read. Zs read where R1+R2 was read, with the pipes of the load off, would prove it.",
  "r1r2-length":
    "Pipes of the load beside the protective conductor explain what was read. The protective conductor, taken out at the load and measured by itself, would prove it.",
  "voltage-drop":
    "At its load the cable is cooler than the table takes it to be. Length and voltage drop, measured, would prove it.",
});

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
    const remarks = [...new Set(findings.flatMap((finding) => finding.remarks.map(({ words }) => words)))];
    const proof = PROVED_BY[check] ?? remarks.join(" ");
    const places = `${findings.length} ${findings.length === 1 ? "place" : "places"}`;
    const words = `${TITLES.get(check) ?? check}, ${places}${proof === "" ? ", not proven." : `: ${proof}`}`;
    return { code: "expected-not-proven", words };
  });
}
