import { today, useField } from "../../shell/job.ts";
import { PEOPLE } from "../../words/people.ts";

/** Checks older than this are worth a word; the interval itself is the firm's. */
const MONTHS = 12;

/** Says when an instrument was last checked long ago. */
export function Checked({ path }: { readonly path: string }) {
  const { value } = useField(path);
  const months = typeof value === "string" ? monthsSince(value) : 0;
  return <p class="fault">{months >= MONTHS ? PEOPLE.old(months) : ""}</p>;
}

function monthsSince(day: string, now = today()): number {
  const [then, at] = [day, now].map((one) => one.split("-").map(Number));
  const [year = 0, month = 0, date = 0] = at ?? [];
  const [thenYear = 0, thenMonth = 0, thenDate = 0] = then ?? [];
  return (year - thenYear) * 12 + month - thenMonth - (date < thenDate ? 1 : 0);
}
