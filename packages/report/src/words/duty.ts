import { type Duty, isKnownFact } from "@good-grounds/core";
import type { Installation } from "@good-grounds/inspection";
import { DUTY } from "../locales/duties-en.ts";

/** A duty in words, the same wherever it is shown. */
export interface DutyWords {
  /** By when: "by 2026-12-17". */
  readonly when: string;
  /** A few words. */
  readonly brief: string;
  /** Who has to do what, as a sentence. */
  readonly asks: string;
  /** What would have to be so; empty where the duty is there. */
  readonly onlyIf: string;
  /** Statute and provision, how it was counted, and what is not certain. */
  readonly grounds: string;
}

export function dutyWords(duty: Duty): DutyWords {
  const { id, who, onlyIf } = duty;
  return {
    when: whenWords(duty),
    brief: DUTY.brief[id],
    asks: `${DUTY.bearer[who]} ${DUTY.asks[id]}`,
    onlyIf: onlyIf.length === 0 ? "" : DUTY.onlyIf(onlyIf.map((one) => DUTY.condition[one])),
    grounds: groundsWords(duty),
  };
}

/** By when, in a few words. */
function whenWords({ time: { kind, day, moment, count, event } }: Duty): string {
  const { when } = DUTY;
  switch (kind) {
    case "by":
      if (moment !== undefined) return when.at(day ?? "", moment.slice(11, 16));
      return day !== null ? when.by(day) : count === undefined ? when.unknown : when.after(count);
    case "next":
      return day !== null ? when.by(day) : count === undefined ? when.undated : when.after(count);
    case "before":
      if (event === undefined) return when.unknown;
      return day !== null ? `${when.by(day)}, ${when.before(event)}` : when.before(event);
    case "keep":
      return day === null ? when.keepOn : when.keep(day);
    case "at-once":
      return when.atOnce;
    case "always":
      return when.always;
    case "undated":
      return when.undated;
  }
}

function groundsWords({ statute, provision, source, time }: Duty): string {
  const parts = [`${statute.title} (${statute.number}), ${provision}`, ...countedWords(time)];
  if (source.basis === "memory") parts.push(DUTY.memory);
  if (source.doubt !== undefined) parts.push(DUTY.doubt(source.doubt));
  return `${parts.join("; ")}.`;
}

function countedWords({ day, count, laterInReport }: Duty["time"]): readonly string[] {
  if (count === undefined) return [];
  const { counted } = DUTY;
  const parts: string[] = [];
  if (count.start !== null) parts.push(counted[count.firstDay](count, count.start.replace("T", " ").slice(0, 16)));
  else if (count.unit === "hour" && day !== null) parts.push(counted.untimed(count));
  if (count.byLaw !== undefined) parts.push(counted.shorter(count.byLaw));
  if (laterInReport !== undefined) parts.push(counted.later(laterInReport));
  return parts;
}

/** Duties that somebody has to be told of: those of the inspector's own work are for the inspector. */
export function isForOthers({ who, id }: Duty): boolean {
  return who !== "inspector" || id.startsWith("inspector-tell-danger");
}

/** A line: by when, what in a few words, and what would have to be so. */
export function dutyLine(duty: Duty): string {
  const { when, brief } = dutyWords(duty);
  const perhaps =
    duty.onlyIf.length === 0 ? "" : ` (${DUTY.onlyIfShort(duty.onlyIf.map((one) => DUTY.condition[one]))})`;
  const later = duty.time.laterInReport;
  return `${brief}: ${when}${perhaps}${later === undefined ? "" : `; ${DUTY.counted.later(later)}`}`;
}

/** One line for an inspection: the nearest date that is sure, and how many there are. */
export function dutyColumn(duties: readonly Duty[]): string {
  const sure = duties.filter((duty) => duty.onlyIf.length === 0 && isForOthers(duty));
  const dated = sure.filter(({ time: { day, kind } }) => day !== null && kind !== "keep");
  const [first] = dated;
  if (first?.time.day != null) return DUTY.column(first.time.day, DUTY.brief[first.id], dated.length);
  const perhaps = duties.find(
    ({ onlyIf, time: { day, kind } }) => onlyIf.length > 0 && day !== null && kind !== "keep",
  );
  if (perhaps !== undefined) return `law: ${dutyLine(perhaps)}`;
  return sure.length === 0 ? "" : DUTY.columnUndated(sure.length);
}

const ACTS_ITSELF: ReadonlySet<string> = new Set(["owner", "landlord", "employer"]);

/** That the report has to be passed on, where somebody ordered it who is not the one with the duties. */
export function passOnWords({ letting: { orderedBy } }: Pick<Installation, "letting">): string {
  if (!isKnownFact(orderedBy) || ACTS_ITSELF.has(orderedBy.word)) return "";
  return DUTY.passOn(DUTY.orderer[orderedBy.word]);
}
