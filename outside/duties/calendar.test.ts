import ICAL from "ical.js";
import { describe, expect, test } from "vitest";
import { assemble } from "../../packages/assembly/src/index.ts";
import { iCalendar } from "../../packages/report/src/calendar/icalendar.ts";
import { dutyCalendar } from "../../packages/report/src/index.ts";
import { type Job, jobFile } from "./job.ts";

/** A calendar of a job as another program reads it. */
function eventsOf(text: string) {
  const calendar = new ICAL.Component(ICAL.parse(text) as unknown[]);
  return calendar.getAllSubcomponents("vevent").map((one) => {
    const event = new ICAL.Event(one);
    return {
      uid: event.uid,
      start: event.startDate.toString(),
      isDay: event.startDate.isDate,
      summary: event.summary,
      description: event.description,
      location: event.location,
      status: one.getFirstPropertyValue("status"),
      stamp: String(one.getFirstPropertyValue("dtstamp")),
      alarms: one.getAllSubcomponents("valarm").map((alarm) => String(alarm.getFirstPropertyValue("trigger"))),
    };
  });
}

function calendarOf(job: Job, issued = "2026-11-12T10:15:00+00:00") {
  const file = jobFile(job);
  const { duties } = assemble(file);
  return {
    duties,
    text: dutyCalendar({ id: file.id, address: "Flat 3; 1, Lane\\Yard, Größenstraße", issued, duties }),
  };
}

const JOB: Job = { classes: ["C1", "C2"], tenure: "social-rented", letting: { occupied: true, equipment: true } };

describe("the calendar of duties as another program reads it", () => {
  test("holds every duty with a date that others have, on its day, by its own mark", () => {
    const { duties, text = "" } = calendarOf(JOB);
    const events = eventsOf(text);
    const dated = duties.filter(({ time: { day, kind } }) => day !== null && kind !== "keep");
    expect(events.length).toBe(dated.length);
    expect(events.length).toBeGreaterThan(3);
    for (const { id, time, onlyIf } of dated) {
      const event = events.find(({ uid }) => uid === `${id}.small@good-grounds.invalid`);
      expect(event).toMatchObject({
        isDay: time.moment === undefined,
        status: onlyIf.length === 0 ? "CONFIRMED" : "TENTATIVE",
        location: "Flat 3; 1, Lane\\Yard, Größenstraße",
        stamp: "2026-11-12T10:15:00Z",
      });
      if (time.moment === undefined) expect(event?.start).toBe(time.day);
      expect(event?.description).toContain("Reminders, not legal advice.");
      expect(event?.alarms.length).toBeGreaterThan(0);
    }
    expect(new Set(events.map(({ uid }) => uid)).size).toBe(events.length);
  });

  test("an hour is the same instant after the clocks changed", () => {
    const { text = "" } = calendarOf({
      ...JOB,
      days: ["2026-10-24"],
      edit: ({ observations: [first] }) =>
        Object.assign(first ?? {}, {
          madeSafe: { done: "Off.", told: "the officer", at: "2026-10-24T16:30:00+01:00" },
        }),
    });
    const event = eventsOf(text).find(({ uid }) => uid.startsWith("england-emergency-hazard"));
    expect(event).toMatchObject({ isDay: false, start: "2026-10-25T15:30:00Z" });
  });

  test("the marks stay, and the stamp moves, where the report is issued again", () => {
    const first = eventsOf(calendarOf(JOB).text ?? "");
    const again = eventsOf(calendarOf(JOB, "2026-11-20").text ?? "");
    expect(again.map(({ uid }) => uid)).toEqual(first.map(({ uid }) => uid));
    expect(again[0]?.stamp).toBe("2026-11-20T00:00:00Z");
    expect(calendarOf(JOB).text).toBe(calendarOf(JOB).text);
  });

  test("there is none where no duty has a date", () => {
    const owner: Job = { tenure: "owner-occupied", classes: ["C1"] };
    expect(calendarOf(owner).text).toBeUndefined();
  });
});

describe("the writer", () => {
  const event = {
    uid: "a@b",
    at: "2026-12-07",
    summary: "Größe, ½; back\\slash – 灯具 🙂 ".repeat(12),
    description: "first line\nsecond; line, with \\n written out\r\nthird",
    location: "",
    tentative: false,
    alarms: ["PT15H"],
  };
  const text = iCalendar("Name", "2026-11-12T23:30:00+01:00", [event]);

  test("ends every line with CRLF and folds after at most 75 octets, within no character", () => {
    expect(text.endsWith("\r\n")).toBe(true);
    expect(text.replaceAll("\r\n", "")).not.toMatch(/[\r\n]/);
    for (const line of text.split("\r\n")) {
      expect(Buffer.byteLength(line)).toBeLessThanOrEqual(75);
      expect(line).not.toContain("\uFFFD");
    }
    expect(text.split("\r\n").some((line) => Buffer.byteLength(line) > 70)).toBe(true);
  });

  test("keeps every sign of a text", () => {
    const [read] = eventsOf(text);
    expect(read?.summary).toBe(event.summary);
    expect(read?.description).toBe("first line\nsecond; line, with \\n written out\nthird");
    expect(read?.stamp).toBe("2026-11-12T22:30:00Z");
  });
});
