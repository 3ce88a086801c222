/** A moment as a person reads it: the time today, day and time before. */
export function clock(moment: string, now = new Date()): string {
  const at = new Date(moment);
  if (Number.isNaN(at.getTime())) return moment;
  const time = at.toLocaleTimeString("en-GB", { hour: "2-digit", minute: "2-digit" });
  if (at.toDateString() === now.toDateString()) return time;
  return `${dayOf(moment)}, ${time}`;
}

/** The day of a moment. */
export function dayOf(moment: string): string {
  const at = new Date(moment);
  if (Number.isNaN(at.getTime())) return moment;
  return at.toLocaleDateString("en-GB", { day: "numeric", month: "short", year: "numeric" });
}
