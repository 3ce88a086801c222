import type { InspectionFile } from "@good-grounds/inspection";
import type { ReportInput } from "../../input.ts";
import { CLASSIFICATION } from "../../locales/en.ts";
import { REPORT } from "../../locales/report-en.ts";
import { type Cell, cell, gap } from "../cell.ts";
import type { Drawings } from "../drawings.ts";
import { nameOf } from "./frame.ts";
import { openItems, unansweredItems } from "./items.ts";
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
import { shortened } from "./shortened.ts";

/** How many limits the first page lists before it points to the section that has them all. */
const UNSEEN_SHOWN = 8;

/** The page a landlord can read on its own. */
export function firstPage(input: ReportInput, drawings: Drawings) {
  const { installation, edition } = input;
  const { file } = installation;
  const { brief, conclusion } = file;
  const next = conclusion?.nextInspection;
  const order = numbered(file);
  return {
    kind: REPORT.kind,
    address: brief.premises.address.join(", "),
    invented: file.invented === true ? REPORT.invented : "",
    facts: [
      [REPORT.facts.inspected, REPORT.day(file.inspectedOn)],
      [REPORT.facts.edition, edition.label],
      [REPORT.facts.premises, brief.premises.description ?? brief.use],
      [REPORT.facts.client, brief.client.name],
      [REPORT.facts.purpose, brief.purpose],
    ],
    length: [REPORT.facts.report, ...REPORT.length(file.id)],
    ...outcome(input, order),
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
  const codes = order
    .filter(({ observation }) => derived.because.includes(observation.id))
    .map(({ number, group }) => `${codeOf(group)} (${number})`);
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
        what: firstSentence(observation.what),
        "todo-label": REPORT.todo,
        todo: observation.remedy === undefined ? REPORT.noRemedy : shortened(observation.remedy),
        "todo-open": observation.remedy === undefined,
        safe: madeSafe(group, observation),
      })),
    },
  ];
}

function madeSafe(group: Group, { madeSafe: record }: Observation): string {
  if (record !== undefined) return REPORT.madeSafeShort(record.at, shortened(record.done));
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

/** Everything that was not seen, not tested or could not be worked out, most telling first. */
function unseen({ installation, weighing, samples }: ReportInput): readonly string[] {
  const { extent, limitations } = installation.file;
  const all = [...weighing.supply, ...weighing.boards.flat(), ...weighing.circuits.flat()];
  const arising = all.filter(({ judgement }) => judgement.verdict !== "not-applicable");
  const open = arising.filter(({ judgement }) => judgement.verdict === "not-known").length;
  const items = openItems(installation.file);
  const limits = [
    ...(extent.notCovered === undefined ? [] : [shortened(extent.notCovered)]),
    ...limitations.map(({ what, why }) => `${what}: ${shortened(why)}`),
    ...extent.sampling.flatMap(({ what, inspected: seen, population }, i) =>
      seen < population ? [REPORT.sampled(what, seen, population, samples[i]?.most)] : [],
    ),
  ].map(capitalised);
  const shown = limits.length > UNSEEN_SHOWN ? limits.slice(0, UNSEEN_SHOWN - 1) : limits;
  return [
    ...(limits.length === 0 ? [REPORT.noneUnseen] : shown),
    ...(shown.length < limits.length ? [REPORT.unseenMore(limits.length - shown.length)] : []),
    ...(items > 0 ? [REPORT.itemsOpen(items)] : []),
    ...(open > 0 ? [REPORT.checksOpen(open, arising.length)] : []),
  ];
}
