import type { Finding, Path, Verdict } from "@good-grounds/core";
import type { ReportInput } from "../../input.ts";
import { WORDS } from "../../locales/en.ts";
import { GRADE } from "../../locales/labels.ts";
import { PROBABILITY } from "../../locales/probability-en.ts";
import { REPORT } from "../../locales/report-en.ts";
import { decidingComparison } from "../../words/comparison.ts";
import { marginWords } from "../../words/figure.ts";
import { placeWords } from "../../words/place.ts";
import { decisionClause, inDoubt, metInDoubt } from "../../words/probability.ts";
import { gradeWords, isExpected, verdictOf } from "../../words/verdict.ts";
import { placesWorstFirst } from "../../words/worst-first.ts";
import type { Drawings } from "../drawings.ts";
import { keptWhole } from "../whole.ts";
import { barOf, decidingWords, missingWords, needsAttention, titleOf, verdictLine } from "./reading-finding.ts";

/** Characters of a finding that is kept on one page. */
const KEPT_WHOLE = 700;

/** Findings that are not met, too near to call or not known, worst first, with the figures that decide; their grounds are attached. */
export function findings(input: ReportInput, drawings: Drawings) {
  const all = places(input);
  const shown = placesWorstFirst(all, input.checks)
    .map(({ heading, path, findings: list }) => ({
      heading,
      path,
      list: list.filter((finding) => needsAttention(finding.judgement.verdict) || isMetInDoubt(input, finding)),
    }))
    .filter(({ list }) => list.length > 0);
  return {
    title: REPORT.findingsTitle,
    intro: [
      REPORT.findingsIntro(countOf(all.flatMap(({ findings: list }) => list))),
      ...(shown.some(({ list }) => list.some((finding) => isMetInDoubt(input, finding)))
        ? [PROBABILITY.metInDoubt]
        : []),
      ...input.outcome.remarks.filter(({ code }) => code === "expected-not-proven").map(({ words }) => words),
    ].join(" "),
    none: REPORT.noFindings,
    places: shown.map(({ heading, path, list }) => ({
      heading,
      findings: list.map((finding) => findingOf(input, finding, path, drawings)),
    })),
  };
}

/** A limit that is met as read, and not 95 % sure to be met. */
function isMetInDoubt({ conformity }: ReportInput, finding: Finding): boolean {
  const sure = conformity?.get(finding);
  return sure !== undefined && metInDoubt(sure, finding.judgement.verdict);
}

export function places({ installation, weighing }: ReportInput) {
  return [
    { heading: WORDS.supply, path: installation.supply.path, findings: weighing.supply },
    ...installation.boards.map((board, i) => ({
      heading: WORDS.board(board.name),
      path: board.path,
      findings: weighing.boards[i] ?? [],
    })),
    ...installation.circuits.map((circuit, i) => ({
      heading: `${circuit.board.name}, ${WORDS.circuit(circuit.designation, circuit.description).replace("  ", " ")}`,
      path: circuit.path,
      findings: weighing.circuits[i] ?? [],
    })),
  ];
}

function findingOf(input: ReportInput, finding: Finding, under: Path, drawings: Drawings) {
  const { check, path, judgement, beside, remarks } = finding;
  const conformity = input.conformity?.get(finding);
  const place = (at: Path) => placeWords(at, input.installation);
  const at = place(path);
  const label = input.checks.find(({ id }) => id === check);
  const open = judgement.verdict === "not-known";
  const bar = barOf(judgement);
  const compared = open ? undefined : decidingComparison(judgement);
  return keptWhole(
    {
      // A device or a bond within the place is named; the place itself stands in the heading above.
      title: at === place(under) ? titleOf(input.checks, check) : `${titleOf(input.checks, check)} (${at})`,
      verdict: verdictOf(judgement),
      // What is missing says more than the formula it is missing from.
      rule: [REPORT.regulations(label?.regulations ?? []), open ? "" : (label?.formula ?? "")]
        .filter((part) => part !== "")
        .join("; "),
      bar: bar === undefined ? "" : drawings.add(bar.svg),
      "bar-words": bar?.words ?? "",
      words: open ? REPORT.missing(missingWords(judgement)) : decidingWords(judgement),
      margin: compared === undefined ? "" : marginWords(compared),
      remarks: [
        ...(conformity !== undefined && inDoubt(conformity, judgement.verdict) ? [decisionClause(conformity)] : []),
        ...remarks.map(({ words }) => words),
        ...(gradeWords(judgement) === "" ? [] : [`${WORDS.grade(gradeWords(judgement))}.`]),
        ...beside
          .filter(({ verdict }) => verdict !== "not-known")
          .map((one) => `${REPORT.besideLabel}${one.matter.name}: ${verdictLine(one)}`),
      ],
    },
    KEPT_WHOLE,
  );
}

function countOf(list: readonly Finding[]): Readonly<Record<Verdict, number>> {
  const counts = { met: 0, "not-met": 0, "too-near": 0, "not-known": 0, "not-applicable": 0 };
  for (const { judgement } of list) counts[judgement.verdict]++;
  return counts;
}

function countWords(count: number, expected: number): string {
  if (count === 0) return "–";
  return expected === 0 ? String(count) : `${count} (${expected} ${GRADE.expected})`;
}

/** How often each calculation came to each verdict. */
export function calculations({ checks, weighing }: ReportInput) {
  const all = [...weighing.supply, ...weighing.boards.flat(), ...weighing.circuits.flat()];
  const ids = [...new Set([...checks.map(({ id }) => id), ...all.map(({ check }) => check)])];
  const rows = ids.flatMap((id) => {
    const made = all.filter(({ check }) => check === id);
    const counts = countOf(made);
    const expected = made.filter(
      ({ judgement: { verdict, grade } }) => verdict === "met" && isExpected(grade, verdict),
    );
    if (Object.values(counts).every((n) => n === 0)) return [];
    const order = ["not-met", "too-near", "not-known", "met", "not-applicable"] as const;
    const regulations = checks.find((label) => label.id === id)?.regulations ?? [];
    return [
      [
        titleOf(checks, id),
        regulations.join(", "),
        ...order.map((verdict) => countWords(counts[verdict], verdict === "met" ? expected.length : 0)),
      ],
    ];
  });
  return { title: REPORT.madeTitle, head: REPORT.madeHead, rows };
}
