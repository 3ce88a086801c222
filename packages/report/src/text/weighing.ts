import type { CheckLabel, Finding, Path, Verdict } from "@good-grounds/core";
import type { ReportInput } from "../input.ts";
import { calculationWords } from "../locales/calculations-en.ts";
import { DUTY } from "../locales/duties-en.ts";
import { WORDS } from "../locales/en.ts";
import { OUTCOME, VERDICT } from "../locales/labels.ts";
import { OPEN, SIGNATURE } from "../locales/outcome-en.ts";
import { REASONING } from "../locales/reasoning-en.ts";
import { decidingComparison, sides } from "../words/comparison.ts";
import { dutyLine, dutyWords, isForOthers, passOnWords } from "../words/duty.ts";
import { marginWords } from "../words/figure.ts";
import { folderWords } from "../words/folder.ts";
import { numbered, numberOf } from "../words/observation-number.ts";
import { dismissedWords, investigateWords, openPointWords } from "../words/open-point.ts";
import { placeWords } from "../words/place.ts";
import { inDoubt } from "../words/probability.ts";
import { headline } from "../words/reasoning.ts";
import { contradictionsOf } from "../words/reasoning-known.ts";
import { standingSignatures } from "../words/signature.ts";
import { isExpected } from "../words/verdict.ts";
import { placesWorstFirst } from "../words/worst-first.ts";
import { renderFinding } from "./finding.ts";
import { misfitLines } from "./misfits.ts";
import { renderReasoning } from "./reasoning.ts";
import { renderThenAndNow } from "./then-and-now.ts";
import { columns, padded, printable, wrapped } from "./wrap.ts";

export interface WeighingOptions {
  readonly width?: number;
  /** Show every check, not only those that need attention. */
  readonly all?: boolean;
  /** Show the argument: of every finding shown, or of one check. */
  readonly grounds?: boolean | string;
  /** Readings that do not agree are left out where this is false: what goes to others shows only what was chosen. */
  readonly misfits?: false;
}

/** One place of the installation with its findings. */
interface Place {
  readonly path: Path;
  readonly heading: string;
  readonly detail: string;
  readonly findings: readonly Finding[];
}

/** The whole weighing for a terminal: what it is, how it stands, then places with the worst first. */
export function renderWeighing(input: ReportInput, options: WeighingOptions = {}): string {
  const width = options.width ?? 80;
  const labels = new Map(input.checks.map((label) => [label.id, label]));
  const place = (path: Path) => placeWords(path, input.installation);
  const lines = [...heading(input, width, options.all === true), ""];
  for (const one of placesWorstFirst(places(input), input.checks)) {
    lines.push(...rule(one, width), ...body(one, labels, place, width, options, input.conformity), "");
  }
  if (options.misfits !== false) lines.push(...misfitLines(input.misfits ?? [], width, options.all === true));
  lines.push(...observationLines(input, width, options));
  if (input.thenAndNow !== undefined) {
    const { all = false, grounds } = options;
    lines.push(
      ...renderThenAndNow(input.thenAndNow, input.installation, { width, all, grounds: grounds === true }),
      "",
    );
  }
  lines.push(WORDS.legend, "", ...wrapped(WORDS.competent, width));
  return `${lines.join("\n")}\n`;
}

/** Observations with what was chosen and what follows; with `grounds` the whole line of reasoning. */
function observationLines(
  { installation, reasoned, outcome }: ReportInput,
  width: number,
  options: WeighingOptions,
): string[] {
  const { observations } = installation.file;
  if (observations.length === 0) return [];
  const lines = [WORDS.observations, "─".repeat(width)];
  for (const { number, observation } of numbered(installation.file)) {
    const { id, place, what, choice, topic } = observation;
    const one = reasoned.find(({ observation }) => observation === id);
    const chosen = choice?.classification;
    const mark = chosen === undefined ? "open" : chosen === "none" ? "–" : chosen;
    lines.push(
      ...wrapped(`${OPEN.observation(`${place}: ${what}`, number)}`, width, `  ${padded(mark, 6)}`, " ".repeat(8)),
    );
    if (one !== undefined) {
      if (options.grounds === true) lines.push(...renderReasoning(one, width, " ".repeat(8)));
      else
        for (const words of [headline(one), ...contradictionsOf(one)])
          lines.push(...wrapped(words, width, " ".repeat(8), " ".repeat(10)));
      const below = outcome.below.find(({ observation }) => observation === id);
      if (below !== undefined)
        lines.push(...wrapped(OPEN.belowBeside(below.follows, below.chosen, below.reason), width, " ".repeat(8)));
      else if (one.choice === "differs") lines.push(...wrapped(REASONING.choice.differs, width, " ".repeat(8)));
    } else if (topic === undefined && chosen !== "none")
      lines.push(...wrapped(REASONING.noTopic, width, " ".repeat(8)));
  }
  return [...lines, ""];
}

/** Open points shown before the rest are counted. */
const POINTS_SHOWN = 8;

function heading(input: ReportInput, width: number, all: boolean): string[] {
  const { installation, outcome, edition, weighing } = input;
  const { file } = installation;
  const lines = wrapped(`${file.brief.premises.address.join(", ")}`, width);
  lines.push(...wrapped(`Inspected ${file.inspectedOn} to ${edition.label}. File ${file.id}.`, width));
  if (input.folder !== undefined) lines.push(...wrapped(folderWords(input.folder), width));
  if (file.invented === true) lines.push(...wrapped(WORDS.invented, width));
  const { count } = outcome;
  const chosen = (["C1", "C2", "C3", "FI"] as const).map((code) => `${code} ${count[code]}`).join("  ");
  lines.push("", ...wrapped(`Outcome: ${OUTCOME[outcome.outcome]}   (${chosen})`, width));
  const stated = file.conclusion?.outcome;
  if (stated !== undefined && stated !== outcome.outcome) lines.push(...wrapped(OPEN.statedOtherwise(stated), width));
  lines.push(...openLines(input, width, all));
  for (const remark of outcome.remarks) lines.push(...wrapped(remark.words, width));
  const findings = [...weighing.supply, ...weighing.boards.flat(), ...weighing.circuits.flat()];
  if (file.observations.length === 0 && findings.some(({ judgement }) => judgement.verdict === "not-met"))
    lines.push(...wrapped(WORDS.noObservation, width));
  const tally = (["not-met", "too-near", "not-known", "met"] as const).map(
    (verdict) => `${findings.filter(({ judgement }) => judgement.verdict === verdict).length} ${VERDICT[verdict]}`,
  );
  lines.push(...wrapped(`Checks: ${tally.join(", ")}${expectedCount(findings, "; ")}.`, width));
  lines.push(...signatureLines(input, width), ...dutyLines(input, width, all));
  return lines;
}

/** How many of the findings are met by what is expected alone, in words behind a mark; empty where none is. */
function expectedCount(findings: readonly Finding[], mark: string): string {
  const count = findings.filter(({ judgement: { verdict, grade } }) => verdict === "met" && isExpected(grade, verdict));
  return count.length === 0 ? "" : `${mark}${WORDS.ofThemExpected(count.length)}`;
}

/** What stands open, and choices below what the stated facts give. */
function openLines(input: ReportInput, width: number, all: boolean): string[] {
  const { points, below } = input.outcome;
  const lines: string[] = [];
  const { observations } = input.installation.file;
  if (below.length > 0) {
    lines.push(OPEN.belowTitle);
    for (const { observation, follows, chosen, reason } of below) {
      const place = observations.find(({ id }) => id === observation)?.place ?? "";
      const number = numberOf(observation, input.installation.file) ?? 0;
      const words = `${OPEN.observation(place, number)}: ${OPEN.belowBeside(follows, chosen, reason)}`;
      lines.push(...wrapped(words, width, "  ! ", "    "));
    }
  }
  lines.push(...listed(OPEN.dismissedTitle, dismissedWords(input.outcome, input), "  ! ", width));
  lines.push(...listed(OPEN.investigateTitle, investigateWords(input.outcome, input), "  ? ", width));
  if (points.length === 0) return lines;
  lines.push(OPEN.heading(points.length));
  const shown = all ? points : points.slice(0, POINTS_SHOWN);
  for (const point of shown) lines.push(...wrapped(openPointWords(point, input, all), width, "  ? ", "    "));
  if (shown.length < points.length) lines.push(`    ${OPEN.more(points.length - shown.length)}`);
  return lines;
}

/** Some sentences under a heading; nothing where there are none. */
function listed(title: string, words: readonly string[], mark: string, width: number): string[] {
  if (words.length === 0) return [];
  return [...wrapped(title, width), ...words.flatMap((one) => wrapped(one, width, mark, "    "))];
}

/** Duties shown before the rest are counted. */
const DUTIES_SHOWN = 5;

/** What the law asks, what presses first; with `all` every duty with its statute and how its date was counted. */
function dutyLines({ duties, installation }: ReportInput, width: number, all: boolean): string[] {
  const told = all ? duties : duties.filter(isForOthers);
  const shown = all ? told : told.slice(0, DUTIES_SHOWN);
  const lines = ["", ...wrapped(`${DUTY.title}. ${all ? DUTY.notAdvice : DUTY.short}`, width)];
  if (told.length === 0) return [...lines, ...wrapped(DUTY.nothing, width, "  ")];
  const passOn = passOnWords(installation);
  if (passOn !== "") lines.push(...wrapped(passOn, width, "  "));
  for (const duty of shown) {
    const mark = duty.onlyIf.length === 0 ? "  § " : "  ? ";
    lines.push(...wrapped(dutyLine(duty), width, mark, "    "));
    if (!all) continue;
    const { asks, grounds } = dutyWords(duty);
    for (const words of [asks, grounds]) lines.push(...wrapped(words, width, "      "));
  }
  if (shown.length < told.length) lines.push(`    ${DUTY.moreHere(told.length - shown.length)}`);
  return lines;
}

/** Who signed, and whether it was for this content. */
function signatureLines({ installation }: ReportInput, width: number): string[] {
  const signatures = standingSignatures(installation.file);
  if (signatures.length === 0) return [SIGNATURE.none];
  return signatures.flatMap(({ words }) => wrapped(words, width));
}

function places({ installation, weighing }: ReportInput): Place[] {
  const earthing = installation.supply.earthing;
  const system = earthing.kind === "fact" ? earthing.word : VERDICT["not-known"];
  return [
    { path: installation.supply.path, heading: WORDS.supply, detail: system, findings: weighing.supply },
    ...installation.boards.map((board, i) => ({
      path: board.path,
      heading: WORDS.board(board.name),
      detail: "",
      findings: weighing.boards[i] ?? [],
    })),
    ...installation.circuits.map((circuit, i) => ({
      path: circuit.path,
      heading: WORDS.circuit(circuit.designation, circuit.description),
      detail: `${circuit.board.name} ${deviceShort(circuit.device)}`.trim(),
      findings: weighing.circuits[i] ?? [],
    })),
  ].filter((one) => one.findings.length > 0);
}

function deviceShort(device: ReportInput["installation"]["circuits"][number]["device"]): string {
  const rated = device.rated.kind === "seen" ? device.rated.detail.text : "";
  const type = device.type.kind === "fact" ? device.type.word : "";
  return [rated, type === "" ? "" : `type ${type}`].filter((part) => part !== "").join(" ");
}

function rule({ heading: left, detail }: Place, width: number): string[] {
  const right = printable(detail);
  const room = width - columns(right) - 2;
  const [first = "", ...more] = wrapped(left, Math.max(20, room));
  const head = right === "" ? first : `${padded(first, room)}  ${right}`;
  return [head, ...more, "─".repeat(width)];
}

const ATTENTION: ReadonlySet<Verdict> = new Set(["not-met", "too-near", "not-known"]);

function body(
  { path, findings }: Place,
  labels: ReadonlyMap<string, CheckLabel>,
  place: (path: Path) => string,
  width: number,
  options: WeighingOptions,
  conformity: ReportInput["conformity"],
): string[] {
  const attention = (finding: Finding): boolean => {
    const sure = conformity?.get(finding);
    const { verdict } = finding.judgement;
    return ATTENTION.has(verdict) || (sure !== undefined && inDoubt(sure, verdict));
  };
  const shown = options.all === true ? findings : findings.filter((finding) => attention(finding));
  const lines = shown.flatMap((finding) => {
    const label = labels.get(finding.check) ?? {
      id: finding.check,
      title: calculationWords(finding.check),
      formula: "",
      regulations: [],
    };
    const grounds = options.grounds === true || options.grounds === finding.check;
    // A device or a bond within the place is named; the place itself stands in the heading above.
    const at = place(finding.path);
    const title = at === place(path) ? label.title : `${label.title} (${at})`;
    return renderFinding({ ...label, title }, finding, { width, place, grounds, conformity: conformity?.get(finding) });
  });
  const met = findings.filter(
    (finding) => finding.judgement.verdict === "met" && (options.all === true || !attention(finding)),
  );
  if (options.all !== true && met.length > 0) {
    const tight = met.find(({ judgement }) => isGraded(judgement));
    const title = labels.get(tight?.check ?? "")?.title ?? "";
    const count = `${WORDS.metOnly(met.length)}${expectedCount(met, ", ")}`;
    const words = tight === undefined ? count : `${count}; ${WORDS.tightest(title, tightWords(tight))}`;
    lines.push(...wrapped(words, width, "  met        ", " ".repeat(13)));
    for (const finding of met) {
      if (options.grounds !== finding.check) continue;
      const label = labels.get(finding.check);
      if (label !== undefined) lines.push(...renderFinding(label, finding, { width, place, grounds: true }));
    }
  }
  return lines;
}

function tightWords({ judgement }: Finding): string {
  const compared = decidingComparison(judgement);
  return compared === undefined ? "" : marginWords(compared);
}

/**
 * Whether a margin says something: a value within a limit has more or less in hand; agreement has none, and a size or a
 * rating either is the next one up or it is not.
 */
function isGraded(judgement: Finding["judgement"]): boolean {
  const compared = decidingComparison(judgement);
  return compared !== undefined && marginWords(compared) !== "" && sides(compared)[0].kind !== "seen";
}
