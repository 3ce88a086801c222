import { assemble } from "@good-grounds/assembly";
import { RELEASE } from "@good-grounds/core";
import { parseInspection } from "@good-grounds/inspection";
import { aboutInspection } from "@good-grounds/issue";
import { isReasonOfItsOwn, standsInTheWay } from "@good-grounds/judgement";
import { openPointWords, standingSignatures } from "@good-grounds/report";
import type { Topics } from "@good-grounds/topics";
import type { PointToAnswer } from "../engine/issue-view.ts";
import { ISSUE } from "../words/issue.ts";

/** What the statement of an issue says of a job; or why it cannot be issued as it stands. */
export type ToIssue =
  | { readonly about: ReturnType<typeof aboutInspection>; readonly reasons: readonly Reason[] }
  | { readonly why: readonly string[] };

interface Reason {
  readonly point: string;
  readonly words: string;
}

function readWhole(json: string, topics: Topics | undefined) {
  const parsed = parseInspection(json);
  if (!parsed.ok) throw new Error(ISSUE.notWhole);
  const { file } = parsed;
  return { file, input: assemble(file, false, topics) };
}

/** The open points of a job that each need a reason before it is issued. */
export function pointsToAnswer(json: string, topics?: Topics): readonly PointToAnswer[] {
  const { input } = readWhole(json, topics);
  return standsInTheWay(input.outcome).map(({ name, point }) => ({ name, words: openPointWords(point, input, true) }));
}

/** What is to be stated of a job, with a reason for every point that stands open. */
export function toIssue(json: string, given: readonly Reason[], topics?: Topics): ToIssue {
  const { file, input } = readWhole(json, topics);
  const signatures = standingSignatures(file);
  const unsigned = signatures.filter(({ standing }) => standing !== "signed").map(({ words }) => words);
  const points = standsInTheWay(input.outcome).map(({ name, point: open }) => ({
    point: openPointWords(open, input, true),
    words: (given.find(({ point }) => point === name)?.words ?? "").trim(),
  }));
  const unanswered = points.filter(({ words }) => !isReasonOfItsOwn(words)).length;
  const why = [
    ...(signatures.length === 0 ? [ISSUE.nobodySigned] : []),
    ...unsigned,
    ...(unanswered > 0 ? [ISSUE.unanswered(unanswered)] : []),
  ];
  if (why.length > 0) return { why };
  const about = aboutInspection({
    text: json,
    file,
    signatures: signatures.map(({ name, signature }) => ({ name, ...signature })),
    outcome: input.outcome.outcome,
    topics: input.folder?.hash,
    release: RELEASE,
    layout: "device",
  });
  return { about, reasons: points };
}
