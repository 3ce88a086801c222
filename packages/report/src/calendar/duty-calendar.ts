import type { Duty } from "@good-grounds/core";
import { DUTY } from "../locales/duties-en.ts";
import { dutyWords, isForOthers } from "../words/duty.ts";
import { type CalendarEvent, iCalendar } from "./icalendar.ts";

/** What a calendar of duties is made from. */
export interface DutyCalendarOf {
  /** The number of the inspection. */
  readonly id: string;
  readonly address: string;
  /** When the report was issued: the last signature, or the day of the inspection while nobody has signed. */
  readonly issued: string;
  readonly duties: readonly Duty[];
}

/** Reminders at nine in the morning, so many days before. */
const SOON = Object.freeze(["P6DT15H", "PT15H"]);
const FAR = Object.freeze(["P59DT15H", "P13DT15H"]);
const HOURS = Object.freeze(["PT4H"]);

/** Duties with a date as an iCalendar file; undefined where none has one. What rests on something not known is tentative. */
export function dutyCalendar({ id, address, issued, duties }: DutyCalendarOf): string | undefined {
  const events = duties.filter(isForOthers).flatMap((duty) => {
    const event = eventOf(duty, id, address);
    return event === undefined ? [] : [event];
  });
  if (events.length === 0) return undefined;
  const stamp = issued.includes("T") ? issued : `${issued}T00:00:00Z`;
  return iCalendar(DUTY.calendar.name(address), stamp, events);
}

/** What is kept until a day has no day by which to do something. */
function eventOf(duty: Duty, id: string, address: string): CalendarEvent | undefined {
  const { kind, day, moment } = duty.time;
  if (day === null || kind === "keep") return undefined;
  const { brief, asks, onlyIf, grounds } = dutyWords(duty);
  return {
    uid: `${duty.id}.${id}@good-grounds.invalid`,
    at: moment ?? day,
    summary: onlyIf === "" ? brief : DUTY.calendar.perhaps(brief),
    description: [onlyIf, asks, grounds, DUTY.notAdvice].filter((words) => words !== "").join("\n"),
    location: address,
    tentative: onlyIf !== "",
    alarms: moment !== undefined ? HOURS : kind === "next" ? FAR : SOON,
  };
}
