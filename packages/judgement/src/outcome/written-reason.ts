/** Words that stand where a reason should and give none. */
const NO_REASON: ReadonlySet<string> = new Set(["na", "nil", "none", "tba", "tbc", "unknown", "noreason", "asabove"]);

/** Letters a reason has at least; fewer are a sign to fill the place. */
const FEWEST = 3;

/** Whether somebody wrote why: a dash, a dot or "n/a" fills the place of a reason and is none. */
export function isWrittenReason(text: string | undefined): text is string {
  const letters = (text ?? "").toLowerCase().replaceAll(/[^\p{L}]/gu, "");
  return letters.length >= FEWEST && !NO_REASON.has(letters);
}
