const HOUR_MS = 3_600_000;

/** The instant at which the clocks change in March or October: 01:00 UTC of the last Sunday of the month. */
function lastSunday(year: number, month: number): number {
  const end = new Date(Date.UTC(year, month + 1, 0));
  return Date.UTC(year, month, end.getUTCDate() - end.getUTCDay(), 1);
}

/** Whether the clocks of the United Kingdom are an hour ahead at an instant, by the rule in force since 1996. */
function isSummer(instant: number): boolean {
  const year = new Date(instant).getUTCFullYear();
  return instant >= lastSunday(year, 2) && instant < lastSunday(year, 9);
}

/**
 * The moment so many hours later, as the clocks of the United Kingdom show it: hours that pass, whatever the clocks do
 * meanwhile. Takes and gives a date and time with its offset.
 */
export function hoursAfter(moment: string, hours: number): string {
  const instant = Date.parse(moment) + hours * HOUR_MS;
  const ahead = isSummer(instant) ? 1 : 0;
  return `${new Date(instant + ahead * HOUR_MS).toISOString().slice(0, 19)}+0${ahead}:00`;
}

/** The earliest of several moments with offsets; undefined of none. */
export function earliest(moments: readonly string[]): string | undefined {
  return moments.reduce<string | undefined>(
    (first, one) => (first === undefined || Date.parse(one) < Date.parse(first) ? one : first),
    undefined,
  );
}
