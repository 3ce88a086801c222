/**
 * Calendar days as "YYYY-MM-DD" and nothing else: no clock, no zone. Periods are counted in the earlier of two possible
 * ways, with the day they run from as day 1.
 */

const DAY_MS = 86_400_000;

function numberOf(day: string): number {
  return Date.UTC(Number(day.slice(0, 4)), Number(day.slice(5, 7)) - 1, Number(day.slice(8, 10))) / DAY_MS;
}

function dayOf(number: number): string {
  return new Date(number * DAY_MS).toISOString().slice(0, 10);
}

/** The day so many days later, or earlier where the number is negative. */
export function daysAfter(day: string, days: number): string {
  return dayOf(numberOf(day) + days);
}

/** The last day of a period of so many days of which `start` is the first. */
export function lastOfDays(start: string, days: number): string {
  return daysAfter(start, days - 1);
}

/** The day of the same date so many years later; 29 February is 1 March where that year has none. */
export function yearsAfter(day: string, years: number): string {
  const year = Number(day.slice(0, 4)) + years;
  return dayOf(Date.UTC(year, Number(day.slice(5, 7)) - 1, Number(day.slice(8, 10))) / DAY_MS);
}

/** The last day of a period of so many years of which `start` is the first day. */
export function lastOfYears(start: string, years: number): string {
  return daysAfter(yearsAfter(start, years), -1);
}

/** The earlier of two days, or the one there is. */
export function earlier(a: string | null, b: string | null): string | null {
  if (a === null || b === null) return a ?? b;
  return a < b ? a : b;
}
