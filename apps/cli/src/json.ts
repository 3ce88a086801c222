import {
  type CheckLabel,
  type Conformity,
  type Evidence,
  type ExpectedReading,
  type Fact,
  type Finding,
  type Ground,
  gradeOf,
  type Issue,
  missingOf,
  type OpenPoint,
  pointer,
  type Remark,
  type Unit,
  weakestBasis,
} from "@good-grounds/core";
import {
  dismissedWords,
  dutyWords,
  investigateWords,
  openPointWords,
  placesWorstFirst,
  type ReportInput,
  type ReportMisfit,
  standingSignatures,
} from "@good-grounds/report";
import { conformityJson } from "./conformity-json.ts";
import { observationJson } from "./reasoning-json.ts";

/** Name and version of the JSON output; the version changes when a member changes its meaning or goes. */
const OUTPUT = Object.freeze({ format: "good-grounds-weighing", version: 2 });

/** A number as JSON can hold it: "unbounded" for what has no end, null for what is not there. */
export function number(value: number): number | "unbounded" | null {
  if (Number.isNaN(value)) return null;
  return Number.isFinite(value) ? value : "unbounded";
}

/** A weighing as plain data. With `grounds`, each finding carries its argument as nodes that refer to each other by number. */
export function weighingJson(input: ReportInput, grounds: boolean): object {
  const { installation, weighing, edition } = input;
  const finding = (one: Finding) => findingJson(one, grounds, input.conformity?.get(one));
  return {
    ...OUTPUT,
    file: installation.file.id,
    invented: installation.file.invented === true,
    edition: edition.id,
    ...(input.folder === undefined ? {} : { topics: input.folder }),
    outcome: outcomeJson(input),
    duties: input.duties.map((duty) => ({ ...duty, words: dutyWords(duty) })),
    signatures: standingSignatures(installation.file).map(({ signature, standing, words }) => ({
      person: signature.person,
      capacity: signature.capacity,
      at: signature.at,
      standing,
      words,
    })),
    supply: weighing.supply.map(finding),
    boards: installation.boards.map((board, i) => ({
      id: board.id,
      name: board.name,
      findings: (weighing.boards[i] ?? []).map(finding),
    })),
    circuits: installation.circuits.map((circuit, i) => ({
      board: circuit.board.id,
      id: circuit.id,
      designation: circuit.designation,
      description: circuit.description,
      findings: (weighing.circuits[i] ?? []).map(finding),
    })),
    worstFirst: worstFirstJson(input),
    observations: input.reasoned.map(observationJson),
    misfits: (input.misfits ?? []).map((one) => misfitJson(one, grounds)),
  };
}

/** Findings not met, too near to call or not known in the order of the report: places by their worst, and so within each. */
function worstFirstJson({ weighing, checks }: ReportInput): object {
  const places = [weighing.supply, ...weighing.boards, ...weighing.circuits].map((findings) => ({ findings }));
  return placesWorstFirst(places, checks)
    .flatMap(({ findings }) => findings)
    .filter(({ judgement: { verdict } }) => verdict !== "met" && verdict !== "not-applicable")
    .map(({ check, path, judgement: { verdict } }) => ({ check, place: pointer(path), verdict }));
}

/** The outcome with what stands open; an open point has its places as pointers, and its words. */
function outcomeJson(input: ReportInput): object {
  const { points, below, dismissed, investigate, ...rest } = input.outcome;
  const dismissals = dismissedWords(input.outcome, input);
  const investigations = investigateWords(input.outcome, input);
  return {
    ...rest,
    points: points.map((point) => pointJson(point, input)),
    below: below.map(({ path, ...one }) => ({ ...one, place: pointer(path) })),
    dismissed: dismissed.map(({ path, ...one }, i) => ({ ...one, place: pointer(path), words: dismissals[i] })),
    investigate: investigate.map((observation, i) => ({ observation, words: investigations[i] })),
  };
}

function pointJson({ follow, ...point }: OpenPoint, input: ReportInput): object {
  return {
    ...point,
    places: point.places.map(pointer),
    words: openPointWords({ ...point, ...(follow === undefined ? {} : { follow }) }, input, true),
    ...(follow === undefined ? {} : { follow: follow.map((one) => pointJson(one, input)) }),
  };
}

function findingJson(
  { check, path, judgement, beside, remarks }: Finding,
  grounds: boolean,
  conformity?: Conformity,
): object {
  return {
    check,
    place: pointer(path),
    verdict: judgement.verdict,
    asRead: judgement.asRead,
    margin: number(judgement.margin),
    grade: gradeOf(judgement),
    missing: missingJson(missingOf(judgement)),
    restsOn: weakestBasis(judgement) ?? null,
    remarks,
    ...(conformity === undefined ? {} : { conformity: conformityJson(conformity) }),
    ...(grounds ? { grounds: groundsJson([judgement, ...beside]), beside: beside.length } : {}),
  };
}

/** What is not known, and why. */
export function missingJson(leaves: ReturnType<typeof missingOf>): readonly object[] {
  return leaves.map((leaf) => ({
    what: leaf.kind === "not-known" ? leaf.term.id : leaf.matter.id,
    place: pointer(leaf.detail.path),
    silence: leaf.detail.silence,
    reason: leaf.detail.reason,
  }));
}

/** Readings that do not agree. With `grounds`, the leaves they rest on. */
export function misfitJson(
  { path, readings, explanations, grounds, ring: _, ...rest }: ReportMisfit,
  withGrounds: boolean,
): object {
  const expected = ({ path: at, value, low, high }: ExpectedReading) => ({
    place: pointer(at),
    value: number(value),
    low: number(low),
    high: number(high),
  });
  return {
    place: pointer(path),
    ...rest,
    readings: readings.map(({ name, unit, shown, measured, ...one }) => ({
      ...expected(one),
      name,
      unit,
      shown,
      measured: number(measured),
    })),
    explanations: explanations.map(({ would, ...one }) => ({ ...one, would: would.map(expected) })),
    ...(withGrounds ? { grounds: groundsJson(grounds) } : {}),
  };
}

/** Nodes of a tree as a list; the first `roots` nodes are the roots, and `from` holds positions in the list. */
export function groundsJson(roots: readonly Ground[]): readonly object[] {
  const numbers = new Map<Ground, number>();
  const order: Ground[] = [];
  const add = (node: Ground) => {
    if (numbers.has(node)) return;
    numbers.set(node, order.length);
    order.push(node);
  };
  for (const root of roots) add(root);
  for (let i = 0; i < order.length; i++) {
    const node = order[i] as Ground;
    if ("from" in node) for (const part of node.from) add(part);
  }
  return order.map((node) => {
    const from = "from" in node && node.from.length > 0 ? { from: node.from.map((part) => numbers.get(part)) } : {};
    return { ...nodeJson(node), ...from };
  });
}

function nodeJson(node: Ground): object {
  switch (node.kind) {
    case "compared":
      return {
        kind: node.kind,
        about: node.matter.id,
        relation: node.relation,
        verdict: node.verdict,
        asRead: node.asRead,
        margin: number(node.margin),
        grade: node.grade,
        ...(node.apart === undefined ? {} : { standard: node.apart.standard, chance: node.apart.chance }),
      };
    case "combined":
      return {
        kind: node.kind,
        about: node.matter.id,
        rule: node.rule,
        verdict: node.verdict,
        asRead: node.asRead,
        margin: number(node.margin),
        grade: node.grade,
      };
    case "settled":
      return { kind: node.kind, about: node.matter.id, verdict: node.verdict, why: node.why };
    case "fact":
    case "fact-not-known":
      return factJson(node);
    default:
      return evidenceJson(node);
  }
}

function factJson(node: Fact<string | boolean>): object {
  const about = {
    kind: node.kind === "fact" ? node.how : "not-known",
    about: node.matter.id,
    place: pointer(node.detail.path),
  };
  if (node.kind === "fact") return { ...about, word: node.word };
  return { ...about, silence: node.detail.silence, reason: node.detail.reason };
}

function evidenceJson(node: Evidence<Unit>): object {
  const base = { kind: node.kind, term: node.term.id, symbol: node.term.symbol, unit: node.term.unit };
  const value = { value: number(node.value), low: number(node.low), high: number(node.high) };
  switch (node.kind) {
    case "seen":
      return { ...base, ...value, text: node.detail.text, place: pointer(node.detail.path) };
    case "measured": {
      const { text, bound, accuracy, taken, path } = node.detail;
      return { ...base, ...value, text, bound, accuracy, taken, place: pointer(path) };
    }
    case "published":
      return { ...base, ...value, row: node.detail.row, source: node.detail.source };
    case "expected":
    case "assumed":
      return {
        ...base,
        ...value,
        why: node.detail.why,
        ...(node.detail.source === undefined ? {} : { source: node.detail.source }),
      };
    case "not-known":
      return { ...base, silence: node.detail.silence, reason: node.detail.reason, place: pointer(node.detail.path) };
    case "computed":
      return { ...base, ...value, operation: node.detail };
    case "lacking":
      return { ...base, operation: node.detail };
  }
}

/** Everything that is wrong with an input, as plain data. */
export function problemsJson(name: string, issues: readonly Issue[]): object {
  return { format: "good-grounds-problems", version: 1, name, issues };
}

/** A calculation's results as plain data. */
export function resultsJson(label: CheckLabel, results: readonly Evidence<Unit>[], remarks: readonly Remark[]): object {
  return {
    format: "good-grounds-computation",
    version: 1,
    id: label.id,
    results: results.length,
    grounds: groundsJson(results),
    remarks,
  };
}

/** A check run alone, as plain data. */
export function conclusionJson(finding: Finding): object {
  return { format: "good-grounds-computation", version: 1, id: finding.check, ...findingJson(finding, true) };
}
