import type { Basis, Nation, Operation, Relation } from "@good-grounds/core";
import { networkEmergencyNumber } from "@good-grounds/core";

export const RELATION: Readonly<Record<Relation, string>> = Object.freeze({
  "at-most": "at most",
  "at-least": "at least",
  "agrees-with": "should agree with",
  "not-below": "not below",
  "not-above": "not above",
});

export const BASIS: Readonly<Record<Basis, string>> = Object.freeze({
  published: "published",
  derived: "derived from published figures",
  "common-practice": "common practice, no source",
  memory: "from memory, to be checked",
});

/** How an operation is written between the symbols of its parts. */
export const OPERATION: Readonly<Record<Operation, (parts: readonly string[]) => string>> = Object.freeze({
  sum: (parts) => parts.join(" + "),
  difference: (parts) => parts.join(" − "),
  product: (parts) => parts.map(grouped).join(" × "),
  quotient: (parts) => parts.map(grouped).join(" ÷ "),
  "less-one": (parts) => `${parts.join("")} − 1`,
  square: (parts) => `${grouped(parts.join(""))}²`,
  "square-root": (parts) => `√${grouped(parts.join(""))}`,
  largest: (parts) => `largest of ${parts.join(", ")}`,
  smallest: (parts) => `smallest of ${parts.join(", ")}`,
  "in-parallel": (parts) => `${parts.join(" and ")} in parallel`,
  "let-through": (parts) => parts.map((part, i) => (i === 0 ? `${grouped(part)}²` : part)).join(" × "),
  "looked-up": (parts) => `looked up: ${parts[0] ?? ""}`,
  "one-of": (parts) => `one of ${parts.length}`,
  "at-most-of": (parts) => `anything up to ${parts.join("")}`,
  between: (parts) => `between ${parts.join(" and ")}`,
  same: (parts) => parts.join(""),
});

function grouped(symbol: string): string {
  return /[ +−×÷]/.test(symbol) && !symbol.startsWith("(") ? `(${symbol})` : symbol;
}

export const WORDS = Object.freeze({
  seen: "seen",
  measured: "measured",
  published: "published",
  assumed: "assumed",
  expected: "expected",
  notKnown: "not known",
  computed: "computed",
  asAbove: "as above",
  yes: "yes",
  no: "no",
  invented: "Invented example: names, places and readings are made up.",
  observations: "Observations",
  legend: "Bars: o value  (--) its band  | limit  == its band  < > beyond the scale",
  supply: "Supply and origin",
  missing: "missing",
  also: "also",
  more: (n: number) => `and ${n} more`,
  beside: "beside",
  rests: "rests on a figure from memory",
  grade: (word: string) => `grade: ${word}`,
  ofThemExpected: (count: number) => `${count} of them expected, not proven`,
  left: (n: number) => `${n}\u00a0% in hand`,
  short: (n: number) => `${n}\u00a0% short of the limit`,
  beyond: (n: number) => `${n}\u00a0% beyond the limit`,
  farBeyond: (n: number) => `more than ${n}\u00a0% beyond the limit`,
  circuit: (designation: string, description: string) => `Circuit ${designation}  ${description}`,
  board: (name: string) => `Board ${name}`,
  rcd: (name: string) => `RCD ${name}`,
  bond: (to: string) => `Main bonding: ${to}`,
  metOnly: (count: number) => `${count} ${count === 1 ? "check" : "checks"} met`,
  tightest: (title: string, left: string) => `tightest: ${title}, ${left}`,
  noObservation:
    "No observation is recorded, so nothing is classified yet. What is not met needs an observation, or a reason why it needs none.",
  competent:
    "An aid for a competent person, who judges and signs. BS 7671, the law, makers' and distributors' instructions and stricter local rules prevail.",
  takenAsShown: "accuracy of the instrument not stated; taken as shown",
  takenAsUsual: "accuracy of the instrument not stated; what usual instruments are out by is taken",
});

/** Cautions and when they belong, in own words. */
export const CAUTIONS = Object.freeze({
  competent: WORDS.competent,
  isolation:
    "Isolate, lock off and prove dead with a tester proved before and after. Look for second supplies. A main switch that is off proves nothing.",
  earthingOff:
    "The earthing conductor may be disconnected only with the installation isolated, and is put back before anything else.",
  live: "Live tests only where justified, after the protective conductors are proved, with leads to GS38; keep others away from metalwork.",
  insulation:
    "Before insulation tests: people away, electronics and surge protection disconnected, circuits discharged afterwards.",
  danger: (nation: Nation | undefined) => {
    const number = nation === undefined ? undefined : networkEmergencyNumber(nation);
    const line =
      number === undefined
        ? "the distributor's own emergency number, as shown at the meter or on the bill"
        : `the distributor's emergency line, ${number}`;
    return `Where there is danger now: make safe with consent, tell occupier and duty holder in writing before leaving, record a refusal. Supply side: ${line}. Fire, smell or shock: out, 999.`;
  },
  readings: "A reading is never changed to suit a warning: test again, or explain.",
  dates:
    "Dates that the law sets are given as reminders, by what is recorded of nation, letting and use. They are not legal advice.",
});
