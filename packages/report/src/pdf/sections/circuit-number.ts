/** Characters of a circuit's number that fit its narrow column. */
const LONGEST = 14;

/** A circuit's number as the tables have it; one that is a name rather than a number is cut there and stands whole below. */
export function shortNumber(designation: string): string {
  const points = [...designation];
  return points.length <= LONGEST ? designation : `${points.slice(0, LONGEST - 1).join("")}…`;
}
