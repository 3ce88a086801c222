import { assemble, misfitsOf } from "@good-grounds/assembly";
import { CHECKS } from "@good-grounds/computations";
import type { Finding, Verdict } from "@good-grounds/core";
import { resolveInstallation } from "@good-grounds/inspection";
import { dutiesOf, harm, outcomeOf, reasonObservations, weigh } from "@good-grounds/judgement";
import {
  dutyColumn,
  OUTCOME,
  openPointsColumn,
  placeWords,
  printable,
  VERDICT,
  worstFirst,
} from "@good-grounds/report";
import { readInspection } from "../inspection.ts";
import { problemsJson, weighingJson } from "../json.ts";
import { judgedWithJson, judgedWithNote } from "../judged-with.ts";
import { decode } from "../read.ts";
import { topicsIn } from "../topics-in.ts";
import { issueLines } from "../words.ts";
import type { Item } from "./sources.ts";

export interface SummaryOptions {
  readonly json: boolean;
  readonly grounds: boolean;
  readonly probability: boolean;
  /** The firm's own folder of topics, by its path. */
  readonly topics?: string;
}

/** What comes of one item: a line for standard output, or text for standard error. */
export interface Summary {
  readonly out: string;
  readonly problem: string;
  /** What is told beside it on standard error, where nothing is wrong. */
  readonly note?: string;
  readonly unreadable?: boolean;
}

/** Weighs one item. Never throws on what the item holds. */
export function summarise({ name, bytes, problem, unreadable }: Item, options: SummaryOptions): Summary {
  if (bytes === undefined)
    return { out: "", problem: `${problem ?? `${name}: nothing to read`}\n`, unreadable: unreadable === true };
  let text: string;
  try {
    text = decode(bytes, name);
  } catch (error) {
    return { out: "", problem: `${error instanceof Error ? error.message : String(error)}\n` };
  }
  const topics = topicsIn(options.topics);
  const parsed = readInspection(text, topics);
  if (!parsed.ok) {
    const out = options.json ? `${JSON.stringify(problemsJson(name, parsed.issues))}\n` : "";
    return { out, problem: issueLines(name, parsed.issues) };
  }
  const note = judgedWithNote(name, parsed.file, topics);
  if (options.json) {
    const weighed = weighingJson(assemble(parsed.file, options.probability, topics), options.grounds);
    return { out: `${JSON.stringify({ ...weighed, ...judgedWithJson(parsed.file, topics) })}\n`, problem: "", note };
  }
  const installation = resolveInstallation(parsed.file);
  const weighing = weigh(installation, false);
  const reasoned = reasonObservations(installation, weighing, topics);
  const outcome = outcomeOf(installation, weighing, reasoned, misfitsOf(installation, weighing), topics);
  const { supply, boards, circuits } = weighing;
  const findings = [...supply, ...boards.flat(), ...circuits.flat()];
  const count = (verdict: Verdict) => findings.filter(({ judgement }) => judgement.verdict === verdict).length;
  const worst = worstOf(findings);
  const columns = [
    printable(parsed.file.id),
    OUTCOME[outcome.outcome],
    openPointsColumn(outcome, { installation, checks: CHECKS }),
    dutyColumn(dutiesOf(installation, outcome)),
    ...(["not-met", "too-near", "not-known", "met"] as const).map((verdict) => `${count(verdict)} ${VERDICT[verdict]}`),
    worst === undefined ? "" : `${worst.check} at ${printable(placeWords(worst.path, installation))}`,
  ];
  return { out: `${columns.filter((column) => column !== "").join("\t")}\n`, problem: "", note };
}

const ORDER = worstFirst(CHECKS.map(({ id }) => ({ id, harm: harm(id) })));

/** The finding not met that is nearest to harm, if there is one. */
function worstOf(findings: readonly Finding[]): Finding | undefined {
  return findings.filter(({ judgement }) => judgement.verdict === "not-met").sort(ORDER)[0];
}
