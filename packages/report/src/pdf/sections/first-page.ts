import type { InspectionFile } from "@good-grounds/inspection";
import type { ReportInput } from "../../input.ts";
import { CLASSIFICATION } from "../../locales/en.ts";
import { REPORT } from "../../locales/report-en.ts";
import { SAFETY } from "../../locales/safety-en.ts";
import { type Cell, cell, gap } from "../cell.ts";
import type { Drawings } from "../drawings.ts";
import { nameOf } from "./frame.ts";
import { unansweredItems } from "./items.ts";
import {
  capitalised,
  codeOf,
  GROUPS,
  type Group,
  markOf,
  type Numbered,
  numbered,
  type Observation,
} from "./observation-order.ts";
import { earthingOffSince } from "./safety.ts";
import { shortened } from "./shortened.ts";
import { unseen } from "./unseen.ts";

/** The page a landlord can read on its own. */
export function firstPage(input: ReportInput, drawings: Drawings) {
  const { installation, edition } = input;
  const { file } = installation;
  const { brief, conclusion } = file;
  const next = conclusion?.nextInspection;
  const order = numbered(file);
  const off = earthingOffSince(file);
  return {
    kind: REPORT.kind,
    address: brief.premises.address.join(", "),
    invented: file.invented === true ? REPORT.invented : "",
    facts: [
      [REPORT.facts.inspected, inspected(file)],
      [REPORT.facts.edition, edition.label],
      [REPORT.facts.premises, brief.premises.description ?? brief.use],
      [REPORT.facts.client, brief.client.name],
      [REPORT.facts.purpose, brief.purpose],
    ],
    length: [REPORT.facts.report, ...REPORT.length(file.id)],
    ...outcome(input, order),
    alarm: off === undefined ? "" : SAFETY.stillOffAlarm(off),
    "todo-title": REPORT.todoTitle,
    nothing: REPORT.nothing,
    groups: GROUPS.filter((group) => group !== "none").flatMap((group) => groupOn(group, order, drawings)),
    "no-work": noWork(order),
    law: REPORT.lawDates,
    "unseen-title": REPORT.unseenTitle,
    unseen: unseen(input),
    "next-title": REPORT.nextTitle,
    next: next === undefined ? REPORT.noNext : REPORT.next(next.by, next.reason),
    "who-title": REPORT.whoTitle,
    "who-head": REPORT.whoHead,
    who: who(file),
    challenge: REPORT.challenge,
    "contents-title": REPORT.contentsTitle,
  };
}

/** The day, with the hours on site where it was one visit, or how many visits it took. */
function inspected({ inspectedOn, visits }: InspectionFile): string {
  const [visit] = visits;
  if (visits.length > 1) return REPORT.inVisits(inspectedOn, visits.length);
  if (visit === undefined || visit.date !== inspectedOn) return REPORT.day(inspectedOn);
  return REPORT.visit(inspectedOn, visit.arrived?.slice(11, 16) ?? "", visit.left?.slice(11, 16) ?? "");
}

/** A signature for each capacity; one that is missing is named, for without it the report is not issued. */
function who(file: InspectionFile): readonly (readonly Cell[])[] {
  return Object.entries(REPORT.capacity).flatMap(([capacity, label]) => {
    const signed = file.signatures.filter((one) => one.capacity === capacity);
    if (signed.length === 0) return [[cell(label), gap(REPORT.unsigned), gap(REPORT.silence.absent)]];
    return signed.map(({ person, at }) => {
      const found = file.people.find(({ id }) => id === person);
      const name = [nameOf(file, person), found?.position, found?.firm].filter(Boolean).join(", ");
      return [cell(label), cell(name), cell(REPORT.moment(at))];
    });
  });
}

function outcome({ installation, outcome: derived }: ReportInput, order: readonly Numbered[]) {
  const { conclusion } = installation.file;
  const stated = conclusion?.outcome;
  // Nothing found where nobody looked is no good result.
  const unanswered = unansweredItems(installation.file);
  const soFar = derived.outcome === "satisfactory" && unanswered > 0;
  const codes = GROUPS.flatMap((group) => {
    const numbers = order
      .filter((one) => one.group === group && derived.because.includes(one.observation.id))
      .map(({ number }) => number);
    return numbers.length === 0 ? [] : [`${codeOf(group)} (${spanned(numbers)})`];
  });
  return {
    "stated-label": REPORT.stated,
    stated: stated === undefined ? REPORT.notStated : REPORT.outcome[stated],
    "stated-open": stated === undefined,
    "derived-label": REPORT.derived,
    derived: soFar ? REPORT.soFar(REPORT.outcome[derived.outcome]) : REPORT.outcome[derived.outcome],
    "derived-open": soFar || derived.outcome === "not-determined",
    differs:
      stated !== undefined && stated !== derived.outcome
        ? REPORT.differs(REPORT.outcome[stated], REPORT.outcome[derived.outcome])
        : "",
    because: [
      REPORT.because(derived, codes),
      ...(soFar ? [REPORT.unansweredItems(unanswered)] : []),
      ...derived.remarks.map(({ words }) => words),
    ].join(" "),
    "summary-label": REPORT.summary,
    summary: conclusion?.generalCondition ?? "",
  };
}

/** Numbers in their order; from three on those that follow one another as the first and the last. */
function spanned(numbers: readonly number[]): string {
  const runs: number[][] = [];
  for (const number of numbers) {
    const run = runs.at(-1);
    if (run !== undefined && run.at(-1) === number - 1) run.push(number);
    else runs.push([number]);
  }
  return runs.flatMap((run) => (run.length < 3 ? run.map(String) : [`${run[0]} to ${run.at(-1)}`])).join(", ");
}

function groupOn(group: Group, order: readonly Numbered[], drawings: Drawings) {
  const members = order.filter((one) => one.group === group);
  if (members.length === 0) return [];
  const heading =
    group === "open"
      ? REPORT.group("open", REPORT.openGroup, "")
      : REPORT.group(group, CLASSIFICATION[group], REPORT.when[group]);
  return [
    {
      mark: markOf(group, drawings),
      code: codeOf(group),
      heading,
      members: members.map(({ number, observation }) => ({
        number,
        place: capitalised(observation.place),
        what: REPORT.closed(firstSentence(observation.what)),
        "todo-label": REPORT.todo,
        todo: observation.remedy === undefined ? REPORT.noRemedy : shortened(observation.remedy),
        "todo-open": observation.remedy === undefined,
        safe: madeSafe(group, observation),
      })),
    },
  ];
}

/** What was done about danger before leaving, whom the inspector told, and what they said; or why nobody could be told. */
function madeSafe(group: Group, { madeSafe: record, untold }: Observation): string {
  if (record !== undefined) {
    const { done, told, at, reply } = record;
    return REPORT.madeSafeShort(shortened(done), told, at, reply ?? "");
  }
  if (untold !== undefined) return REPORT.untold(shortened(untold));
  return group === "C1" ? REPORT.madeSafeMissing : "";
}

function noWork(order: readonly Numbered[]): string {
  const count = order.filter(({ group }) => group === "none").length;
  return count === 0 ? "" : REPORT.unclassifiedNone(count);
}

function firstSentence(paragraph: string): string {
  const [sentence = paragraph] = /^.+?[.!?](?=\s+\p{Lu}|\s*$)/su.exec(paragraph) ?? [];
  return shortened(sentence.trim());
}
