import {
  type CheckLabel,
  type Conclusion,
  type Conformity,
  isKnown,
  type Judgement,
  missingOf,
  type Path,
  weakestBasis,
} from "@good-grounds/core";
import { WORDS } from "../locales/en.ts";
import {
  alsoNotMet,
  comparisonWords,
  decidingComparison,
  decidingFacts,
  partWords,
  sides,
} from "../words/comparison.ts";
import { bandWords, marginFigure } from "../words/figure.ts";
import { probabilityWords } from "../words/probability.ts";
import { spoken } from "../words/spoken.ts";
import { gradeWords, verdictShort } from "../words/verdict.ts";
import { renderArgument } from "./argument.ts";
import { marginBar } from "./margin-bar.ts";
import { columns, padded, wrapped } from "./wrap.ts";

const VERDICT_WIDTH = 11;
const BAR_WIDTH = 24;

/** A finding as text: verdict and title, the deciding comparison with its bar, what is missing, remarks. */
export function renderFinding(
  label: CheckLabel,
  conclusion: Conclusion,
  options: {
    readonly width: number;
    readonly place: (path: Path) => string;
    readonly grounds: boolean;
    readonly conformity?: Conformity | undefined;
  },
): string[] {
  const { judgement, beside, remarks } = conclusion;
  const { width, place } = options;
  const indent = " ".repeat(VERDICT_WIDTH + 2);
  const lines = wrapped(label.title, width, `  ${padded(verdictShort(judgement), VERDICT_WIDTH)}`, indent);
  const compared = decidingComparison(judgement);
  if (compared !== undefined && judgement.verdict !== "not-known" && judgement.verdict !== "not-applicable") {
    lines.push(...comparisonLines(compared, width, indent));
  } else if (judgement.verdict !== "not-known") {
    const facts = decidingFacts(judgement);
    if (facts !== "") lines.push(...wrapped(facts, width, indent));
  }
  for (const words of alsoLines(judgement)) lines.push(...wrapped(words, width, indent));
  if (judgement.verdict === "not-known") lines.push(...wrapped(openWords(judgement), width, indent));
  if (options.conformity !== undefined)
    for (const sentence of probabilityWords(options.conformity)) lines.push(...wrapped(sentence, width, indent));
  for (const remark of remarks) lines.push(...wrapped(remark.words, width, indent));
  const grade = gradeWords(judgement);
  if (grade !== "") lines.push(`${indent}${WORDS.grade(grade)}`);
  if (weakestBasis(judgement) === "memory") lines.push(`${indent}${WORDS.rests}`);
  if (options.grounds) {
    lines.push(...renderArgument(judgement, place, width, "    "));
    for (const other of beside) {
      lines.push(`    ${WORDS.beside}:`, ...renderArgument(other, place, width, "    "));
    }
  }
  return lines;
}

/** Most further parts that are told; a ring can have two hundred points. */
const MOST_ALSO = 4;

function alsoLines(judgement: Judgement): readonly string[] {
  const also = alsoNotMet(judgement);
  const told = also.slice(0, MOST_ALSO).map((part) => `${WORDS.also}: ${partWords(part)}`);
  return also.length > MOST_ALSO ? [...told, WORDS.more(also.length - MOST_ALSO)] : told;
}

/** What is missing, each once; where nothing is missing by name, what leaves the judgement open. */
function openWords(judgement: Judgement): string {
  const names = missingOf(judgement).map((leaf) => {
    const name = leaf.kind === "not-known" ? leaf.term.name : leaf.matter.name;
    const { reason, silence } = leaf.detail;
    if (reason === "") return name;
    return `${name} (${silence === "not-tabulated" ? spoken(reason) : reason})`;
  });
  return names.length === 0 ? decidingFacts(judgement) : `${WORDS.missing}: ${[...new Set(names)].join("; ")}`;
}

/** "Zs,hot 1.28 Ω at most Zs,max 1.37 Ω" with a bar and the margin, on one line where it fits. */
function comparisonLines(compared: Parameters<typeof comparisonWords>[0], width: number, indent: string): string[] {
  const words = comparisonWords(compared);
  const [left] = sides(compared);
  const bar = marginBar(compared, BAR_WIDTH);
  const margin =
    compared.relation === "at-most" || compared.relation === "at-least" ? marginFigure(compared.margin) : "";
  const tail = bar === "" ? margin : `${bar} ${margin}`.trimEnd();
  const room = width - columns(indent) - columns(tail) - 2;
  const band = isKnown(left) ? bandWords(left) : "";
  const full = band === "" ? words : `${words}; band ${band}`;
  if (tail === "") return wrapped(full, width, indent);
  if (columns(full) <= room) return [`${indent}${padded(full, room)}  ${tail}`];
  return [...wrapped(full, width, indent), `${" ".repeat(Math.max(0, width - columns(tail)))}${tail}`];
}
