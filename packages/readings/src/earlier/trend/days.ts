const DAY = 86_400_000;

/** Days from one calendar date to another, below 0 where the other is earlier. */
export function daysBetween(from: string, to: string): number {
  return Math.round((Date.parse(to) - Date.parse(from)) / DAY);
}

/** The calendar date so many days later. */
export function dayAfter(from: string, days: number): string {
  return new Date(Date.parse(from) + days * DAY).toISOString().slice(0, 10);
}
