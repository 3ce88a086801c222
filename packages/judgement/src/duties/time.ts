import type { DutyCount, DutyEvent, DutyTime } from "@good-grounds/core";
import { daysAfter, earlier, lastOfDays, lastOfYears, yearsAfter } from "./calendar-days.ts";
import type { DutyEvidence } from "./evidence.ts";
import type { TimeRule } from "./row.ts";
import { hoursAfter } from "./uk-time.ts";

/** By when a duty has to be done, and how that was counted. */
export function dutyTime(rule: TimeRule, evidence: DutyEvidence): DutyTime {
  switch (rule.kind) {
    case "within":
      return rule.unit === "hour" ? withinHours(rule.number, rule.from, evidence) : within(rule, evidence);
    case "next":
      return nextInspection(rule.years, rule.firstDay, evidence);
    case "before":
      return { kind: "before", day: dayBefore(toCome(evidence)), event: rule.event };
    case "keep":
      return keep(rule.years, evidence);
    case "on":
      return { kind: "by", day: rule.day };
    default:
      return { kind: rule.kind, day: null };
  }
}

/** The day from which a period runs; null where it is not known, or lies ahead. */
function dayOf(event: DutyEvent, evidence: DutyEvidence): string | null {
  switch (event) {
    case "inspection":
      return evidence.firstDay;
    case "inspection-completed":
      return evidence.lastDay;
    case "finding":
      return evidence.foundOn;
    case "occupation":
    case "tenancy":
      return toCome(evidence);
    case "equipment-check":
      return evidence.equipmentChecked;
    case "told":
    case "request":
    case "work-done":
    case "notice":
      return null;
  }
}

/** First day of a tenancy that begins after the inspection. */
function toCome({ starts, firstDay }: DutyEvidence): string | null {
  return starts !== null && (firstDay === null || starts > firstDay) ? starts : null;
}

function dayBefore(day: string | null): string | null {
  return day === null ? null : daysAfter(day, -1);
}

function within(rule: Extract<TimeRule, { kind: "within" }>, evidence: DutyEvidence): DutyTime {
  const { unit, from, firstDay } = rule;
  const stated = rule.orShorter === true ? evidence.workWithinDays : null;
  const number = stated === null ? rule.number : Math.min(stated, rule.number);
  const start = dayOf(from, evidence);
  const count: DutyCount = {
    number,
    unit,
    from,
    start,
    firstDay,
    ...(number < rule.number ? { byLaw: rule.number } : {}),
  };
  const day = start === null ? null : unit === "year" ? lastOfYears(start, number) : lastOfDays(start, number);
  return { kind: "by", day, count };
}

/** Hours from when somebody was told; where the hour is not recorded, they end in the course of the next day. */
function withinHours(number: number, from: DutyEvent, { toldAt, firstDay }: DutyEvidence): DutyTime {
  const count = (start: string | null): DutyCount => ({ number, unit: "hour", from, start, firstDay: "elapsed" });
  if (toldAt !== null) {
    const moment = hoursAfter(toldAt, number);
    return { kind: "by", day: moment.slice(0, 10), moment, count: count(toldAt) };
  }
  const days = Math.ceil(number / 24);
  return { kind: "by", day: firstDay === null ? null : daysAfter(firstDay, days), count: count(null) };
}

/** The earlier of the law's last day and the day in the report. */
function nextInspection(years: number | null, firstDay: "stated" | "safer", evidence: DutyEvidence): DutyTime {
  const { firstDay: start, nextInspectionBy: inReport } = evidence;
  if (years === null) return { kind: "next", day: inReport };
  const last = start === null ? null : lastOfYears(start, years);
  const isLater = last !== null && inReport !== null && inReport > last;
  return {
    kind: "next",
    day: earlier(last, inReport),
    count: { number: years, unit: "year", from: "inspection", start, firstDay },
    ...(isLater ? { laterInReport: inReport } : {}),
  };
}

/** What has to be kept is kept the longer of two possible ways. */
function keep(years: number | null, { lastDay, nextInspectionBy }: DutyEvidence): DutyTime {
  if (years === null) return { kind: "keep", day: nextInspectionBy };
  return { kind: "keep", day: lastDay === null ? null : yearsAfter(lastDay, years) };
}
