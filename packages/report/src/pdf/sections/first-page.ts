import type { InspectionFile } from "@good-grounds/inspection";
import type { ReportInput } from "../../input.ts";
import { CLASSIFICATION } from "../../locales/labels.ts";
import { OPEN, SIGNATURE } from "../../locales/outcome-en.ts";
import { REPORT } from "../../locales/report-en.ts";
import { SAFETY } from "../../locales/safety-en.ts";
import { firstSentence } from "../../words/first-sentence.ts";
import { folderWords } from "../../words/folder.ts";
import { GROUPS, type Group, type Numbered, numbered, type Observation } from "../../words/observation-number.ts";
import { dismissedWords, investigateWords, openPointWords } from "../../words/open-point.ts";
import { standingSignatures } from "../../words/signature.ts";
import { type Cell, cell, gap } from "../cell.ts";
import type { Drawings } from "../drawings.ts";
import { dutiesOnFirst } from "./duties.ts";
import { capitalised, codeOf, markOf } from "./observation-order.ts";
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
      ...(input.folder === undefined ? [] : [[REPORT.facts.topics, folderWords(input.folder)] as [string, string]]),
      ...(input.issue === undefined
        ? []
        : [[REPORT.facts.issue, REPORT.issue(input.issue.number, input.issue.replaces)] as [string, string]]),
      [REPORT.facts.premises, brief.premises.description ?? useWords(brief.use)],
      [REPORT.facts.client, brief.client.name],
      [REPORT.facts.purpose, brief.purpose],
    ],
    length: [REPORT.facts.report, ...REPORT.length(file.id)],
    ...outcome(input, order),
    alarm: off === undefined ? "" : SAFETY.stillOffAlarm(off),
    "todo-title": REPORT.todoTitle,
    counts: REPORT.counts(
      (["C1", "C2", "C3", "FI"] as const).map((code) => [code, countOf(code, order)]),
      countOf("open", order),
    ),
    nothing: REPORT.nothing,
    groups: GROUPS.filter((group) => group !== "none").flatMap((group) => groupOn(group, order, input, drawings)),
    "no-work": noWork(order),
    ...dutiesOnFirst(input),
    "unseen-title": REPORT.unseenTitle,
    unseen: unseen(input),
    "next-title": REPORT.nextTitle,
    next: next === undefined ? REPORT.noNext : REPORT.next(next.by, shortened(next.reason)),
    within:
      conclusion?.workWithin === undefined
        ? ""
        : REPORT.workWithin(conclusion.workWithin.days, shortened(conclusion.workWithin.reason ?? "")),
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

/**
 * A signature for each capacity; one that is missing is named, for without it the report is not issued, and so is one
 * that was given for another content.
 */
function who(file: InspectionFile): readonly (readonly Cell[])[] {
  const standing = standingSignatures(file);
  return Object.entries(REPORT.capacity).flatMap(([capacity, label]) => {
    const signed = standing.filter(({ signature }) => signature.capacity === capacity);
    if (signed.length === 0) return [[cell(label), gap(REPORT.unsigned), gap(REPORT.silence.absent)]];
    return signed.map(({ signature: { person, at }, standing: stands, name }) => {
      if (stands !== "signed")
        return [cell(label), gap(SIGNATURE[stands](name, REPORT.moment(at))), gap(REPORT.unsigned)];
      const found = file.people.find(({ id }) => id === person);
      return [
        cell(label),
        cell([name, found?.position, found?.firm].filter(Boolean).join(", ")),
        cell(REPORT.moment(at)),
      ];
    });
  });
}

/** Open points and choices named beside the outcome; the full list has a section of its own. */
const POINTS_SHOWN = 3;

function outcome(input: ReportInput, order: readonly Numbered[]) {
  const { installation, outcome: derived } = input;
  const { conclusion } = installation.file;
  const stated = conclusion?.outcome;
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
    derived: REPORT.outcome[derived.outcome],
    "derived-open": derived.outcome === "not-determined",
    differs:
      stated !== undefined && stated !== derived.outcome
        ? REPORT.differs(REPORT.outcome[stated], REPORT.outcome[derived.outcome])
        : "",
    because: [REPORT.because(derived, codes), ...forTheOwner(derived.remarks)].join(" "),
    "points-title": derived.points.length === 0 ? "" : OPEN.heading(derived.points.length),
    points: fewOf(
      derived.points.map((point) => shortened(openPointWords(point, input), POINT_LENGTH)),
      OPEN.moreIn,
    ),
    "below-title": derived.below.length === 0 ? "" : OPEN.belowTitle,
    below: fewOf(
      derived.below.map(({ observation, follows, chosen }) =>
        OPEN.belowShort(numberedPlace(observation, order), follows, chosen),
      ),
      OPEN.more,
    ),
    ...answeredByWords(input),
    "summary-label": REPORT.summary,
    summary: conclusion?.generalCondition ?? "",
  };
}

/** What only a reason answers, and what is not known and has to be investigated. */
function answeredByWords(input: ReportInput) {
  const short = (words: readonly string[]) =>
    fewOf(
      words.map((one) => shortened(one, POINT_LENGTH)),
      OPEN.more,
    );
  const dismissed = short(dismissedWords(input.outcome, input));
  const investigate = short(investigateWords(input.outcome, input));
  return {
    "dismissed-title": dismissed.length === 0 ? "" : OPEN.dismissedTitle,
    dismissed,
    "investigate-title": investigate.length === 0 ? "" : OPEN.investigateTitle,
    investigate,
  };
}

/** Characters of an open point on the first page. */
const POINT_LENGTH = 170;

/** The first few of a list, and how many more there are. */
function fewOf(words: readonly string[], more: (count: number) => string): readonly string[] {
  const shown = words.length > POINTS_SHOWN + 1 ? words.slice(0, POINTS_SHOWN) : words;
  return shown.length === words.length ? shown : [...shown, more(words.length - shown.length)];
}

function numberedPlace(id: string, order: readonly Numbered[]): string {
  const found = order.find(({ observation }) => observation.id === id);
  return found === undefined ? id : REPORT.numberedPlace(found.number, shortened(found.observation.place, 60));
}

/** Numbers in their order; from three on those that follow one another as the first and the last. */
export function spanned(numbers: readonly number[]): string {
  const runs: number[][] = [];
  for (const number of numbers) {
    const run = runs.at(-1);
    if (run !== undefined && run.at(-1) === number - 1) run.push(number);
    else runs.push([number]);
  }
  return runs.flatMap((run) => (run.length < 3 ? run.map(String) : [`${run[0]} to ${run.at(-1)}`])).join(", ");
}

function groupOn(group: Group, order: readonly Numbered[], input: ReportInput, drawings: Drawings) {
  const { outcome: derived } = input;
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
        what: REPORT.closed(shortened(firstSentence(observation.what))),
        "todo-label": REPORT.todo,
        ...todoOf(observation, input),
        below: derived.below
          .filter((one) => one.observation === observation.id)
          .map(({ follows, chosen, reason }) =>
            OPEN.belowBeside(follows, chosen, reason === null ? null : shortened(reason, 160)),
          )
          .join(" "),
        safe: madeSafe(group, observation),
      })),
      // Said where the page has no room for all of them.
      more: "",
    },
  ];
}

/** What the inspector wrote of putting it right, else the first that the facts allow; open only where there is neither. */
function todoOf({ id, remedy }: Observation, { reasoned }: ReportInput) {
  if (remedy !== undefined) return { todo: shortened(remedy), "todo-open": false };
  const [first, ...others] = reasoned.find(({ observation }) => observation === id)?.remedies ?? [];
  return first === undefined
    ? { todo: REPORT.noRemedy, "todo-open": true }
    : { todo: REPORT.proposed(shortened(first.remedy.words), others.length), "todo-open": false };
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

function countOf(group: Group, order: readonly Numbered[]): number {
  return order.filter((one) => one.group === group).length;
}

function noWork(order: readonly Numbered[]): string {
  const count = countOf("none", order);
  return count === 0 ? "" : REPORT.unclassifiedNone(count);
}

function useWords(use: ReportInput["installation"]["file"]["brief"]["use"]): string {
  return typeof use === "string" ? use : REPORT.extent.useNotKnown(use.reason);
}

/** What a reader who is no electrician needs beside the outcome; what would prove a calculation stands with the calculations. */
function forTheOwner(remarks: ReportInput["outcome"]["remarks"]): readonly string[] {
  return remarks.filter(({ code }) => code === "further-investigation").map(({ words }) => words);
}
