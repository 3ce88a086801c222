/** A moment as a person reads it: the time today, day and time before. */
export function clock(moment: string, now = new Date()): string {
  const at = new Date(moment);
  if (Number.isNaN(at.getTime())) return moment;
  const time = at.toLocaleTimeString("en-GB", { hour: "2-digit", minute: "2-digit" });
  if (at.toDateString() === now.toDateString()) return time;
  return `${at.toLocaleDateString("en-GB", { day: "numeric", month: "short", year: "numeric" })}, ${time}`;
}

/** A calendar date as a person reads it. */
export function dayWords(day: string): string {
  const at = new Date(`${day.slice(0, 10)}T12:00:00`);
  if (Number.isNaN(at.getTime())) return day;
  return at.toLocaleDateString("en-GB", { day: "numeric", month: "long", year: "numeric" });
}
