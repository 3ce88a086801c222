import fc from "fast-check";
import { expect, test } from "vitest";
import { daysAfter, lastOfDays, lastOfYears, yearsAfter } from "./calendar-days.ts";
import { earliest, hoursAfter } from "./uk-time.ts";

test("a period of days has the day it runs from as day 1, over ends of months, of years and leap days", () => {
  expect(lastOfDays("2026-11-10", 28)).toBe("2026-12-07");
  expect(lastOfDays("2026-12-31", 28)).toBe("2027-01-27");
  expect(lastOfDays("2027-02-01", 28)).toBe("2027-02-28");
  expect(lastOfDays("2028-02-02", 28)).toBe("2028-02-29");
  expect(lastOfDays("2026-10-12", 14)).toBe("2026-10-25");
  expect(lastOfDays("2026-05-05", 1)).toBe("2026-05-05");
});

test("a period of years ends on the day before the same date; one that begins on 29 February ends with February", () => {
  expect(lastOfYears("2026-11-10", 5)).toBe("2031-11-09");
  expect(lastOfYears("2026-01-01", 5)).toBe("2030-12-31");
  expect(lastOfYears("2028-02-29", 5)).toBe("2033-02-28");
  expect(lastOfYears("2027-03-01", 5)).toBe("2032-02-29");
  expect(yearsAfter("2028-02-29", 6)).toBe("2034-03-01");
  expect(yearsAfter("2028-02-29", 4)).toBe("2032-02-29");
});

const anyDay = fc.integer({ min: 0, max: 40_000 }).map((days) => daysAfter("2000-01-01", days));

test("a later start never ends earlier, and the days between are as many as were asked", () => {
  fc.assert(
    fc.property(anyDay, fc.nat({ max: 400 }), fc.integer({ min: 1, max: 100 }), (day, later, length) => {
      const other = daysAfter(day, later);
      expect(lastOfDays(other, length) >= lastOfDays(day, length)).toBe(true);
      expect(lastOfYears(other, 5) >= lastOfYears(day, 5)).toBe(true);
      expect((Date.parse(lastOfDays(day, length)) - Date.parse(day)) / 86_400_000 + 1).toBe(length);
    }),
  );
});

test("24 hours are 24 hours on the clock, also in the nights when the clocks change", () => {
  expect(hoursAfter("2026-10-24T20:00:00+01:00", 24)).toBe("2026-10-25T19:00:00+00:00");
  expect(hoursAfter("2027-03-27T20:00:00+00:00", 24)).toBe("2027-03-28T21:00:00+01:00");
  expect(hoursAfter("2026-11-10T15:30:00+00:00", 24)).toBe("2026-11-11T15:30:00+00:00");
  expect(hoursAfter("2026-07-01T12:00:00Z", 24)).toBe("2026-07-02T13:00:00+01:00");
  expect(earliest(["2026-07-01T12:00:00Z", "2026-07-01T12:30:00+01:00"])).toBe("2026-07-01T12:30:00+01:00");
});

test("the clocks of the United Kingdom are those of the time zone database", () => {
  const shown = new Intl.DateTimeFormat("en-GB", { timeZone: "Europe/London", hour: "2-digit", hourCycle: "h23" });
  fc.assert(
    fc.property(fc.integer({ min: Date.UTC(2020, 0, 1), max: Date.UTC(2060, 0, 1) }), (instant) => {
      const moment = `${new Date(instant).toISOString().slice(0, 19)}Z`;
      expect(hoursAfter(moment, 24).slice(11, 13)).toBe(shown.format(Date.parse(moment) + 86_400_000));
    }),
  );
});
