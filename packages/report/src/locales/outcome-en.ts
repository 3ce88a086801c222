import type { Classification, EssentialTest, FollowsDespite, Severity } from "@good-grounds/core";

/** Essential tests in words. */
const TEST: Readonly<Record<EssentialTest, string>> = Object.freeze({
  continuity: "continuity of the protective conductor (R1+R2 or R2)",
  insulation: "insulation resistance to earth",
  polarity: "polarity",
  zs: "Zs",
  "rcd-present": "whether there is an RCD",
  "rcd-time": "operating time of the RCD",
  ze: "Ze",
  "supply-polarity": "polarity of the supply",
});

/** How a classification that was chosen is named in a sentence. */
function chosenWords(chosen: Classification): string {
  return chosen === "none" ? "classified as nothing to be done" : `classified ${chosen}`;
}

function followsWords(follows: FollowsDespite): string {
  return follows === "FI"
    ? "by the facts stated danger cannot be ruled out (FI)"
    : `by the facts stated ${follows} follows`;
}

const counted = (count: number, one: string, several: string) => `${count} ${count === 1 ? one : several}`;

/** Words of the outcome and of what stands open. */
export const OPEN = Object.freeze({
  title: "What stands open",
  intro:
    "Each of these decides, and nobody has answered it by an observation, a written reason or a limitation. Until then the installation cannot be called satisfactory.",
  count: (count: number) => counted(count, "open point", "open points"),
  belowCount: (count: number) => counted(count, "choice below the facts", "choices below the facts"),
  heading: (count: number) =>
    `${counted(count, "point stands", "points stand")} open${count > 1 ? ", worst first" : ""}:`,
  more: (count: number) => `and ${count} more`,
  moreIn: (count: number) => `and ${count} more, in “What stands open”.`,
  statedOtherwise: (stated: string) => `The inspector states “${stated}”.`,
  earthingOff: "The earthing conductor is recorded as disconnected and not as connected again.",
  below: (place: string, follows: FollowsDespite, chosen: Classification) =>
    `${place}: ${followsWords(follows)}; ${chosenWords(chosen)} without a written reason.`,
  dangerUntold: (places: string) =>
    `Danger (C1) without a record of what made it safe and who was told, or why nobody could be told: ${places}.`,
  unclassified: (places: string, follows: "C1" | "C2" | null) =>
    follows === null
      ? `Not classified yet: ${places}.`
      : `Not classified yet, though ${followsWords(follows)}: ${places}.`,
  notMet: (title: string, places: string) => `${title}: not met and not answered by an observation: ${places}.`,
  pastLimit: (title: string, places: string) =>
    `${title}: the reading is past its limit by less than the instrument can tell, and no observation answers it: ${places}.`,
  notKnown: (title: string, places: string) =>
    `${title}: the reading is recorded, and what its limit rests on is not, so that nobody can say whether it is met: ${places}.`,
  misfit: (places: string) =>
    `Readings that cannot all be true of a sound installation, and no observation speaks of them: ${places}.`,
  defectiveSample: (what: string, defective: number, inspected: number) =>
    `Sample “${what}”: ${defective} of ${inspected} found defective, and no observation speaks of it.`,
  sameCause: (several: readonly string[]) => `For the same cause: ${several.join("; ")}.`,
  alone: Object.freeze({
    "not-met": (title: string, places: string) => `${title}, not met: ${places}`,
    "past-limit": (title: string, places: string) => `${title}, read past its limit: ${places}`,
    "not-known": (title: string, places: string) => `${title}, not known: ${places}`,
    opened: (title: string, places: string) => `${title}: ${places}`,
  }),
  /** What was ticked, by what it asks. */
  items: (asked: readonly string[]) => {
    const [first = "", ...others] = asked.map((one) => `“${one}”`);
    return others.length === 0 ? first : `${[first, ...others.slice(0, -1)].join(", ")} and ${others.at(-1)}`;
  },
  dismissedTitle: "Not met, and left as it is by the inspector's reason alone:",
  dismissed: (place: string, checks: readonly string[], chosen: Classification, reason: string) =>
    `${place}: ${checks.join("; ")}: not met; ${chosenWords(chosen)}, for this reason: ${reason}`,
  dismissedCount: (count: number) =>
    `${counted(count, "check not met is", "checks not met are")} left by a reason alone`,
  investigateTitle: "Not known, and to be investigated without delay; until then danger is not ruled out there:",
  investigate: (place: string, what: string) => `${place}: ${what}`,
  investigateCount: (count: number) => `${count} to be investigated`,
  opened: (title: string, places: string, possible: readonly Severity[]) =>
    `${title}: ${places}. By what the file records ${possible.join(" or ")} follows, and no observation speaks of it.`,
  nothingTested: "No test of any circuit is recorded.",
  notTested: (tests: readonly EssentialTest[], places: string) => {
    const [first = "", ...others] = tests.map((test) => TEST[test]);
    const list = others.length === 0 ? first : `${[first, ...others.slice(0, -1)].join(", ")} and ${others.at(-1)}`;
    return `Not recorded, and not limited with a reason: ${list}: ${places}.`;
  },
  nothingInspected: "No item of the inspection is recorded as looked at.",
  notInspected: {
    not: (count: number) => `${counted(count, "item", "items")} of the inspection without an answer.`,
    "not-verified": (count: number) => `${counted(count, "item", "items")} of the inspection not verified.`,
    limited: (count: number) =>
      `${counted(count, "item", "items")} of the inspection limited, more than were looked at.`,
  },
  belowShort: (place: string, follows: FollowsDespite, chosen: Classification) =>
    `${place}: ${followsWords(follows)}; ${chosenWords(chosen)}.`,
  belowBeside: (follows: FollowsDespite, chosen: Classification, reason: string | null) => {
    const first = `${followsWords(follows)}; ${chosenWords(chosen)}`;
    return `${first[0]?.toUpperCase() ?? ""}${first.slice(1)}: ${reason === null ? "no reason is written." : `reason: ${reason}`}`;
  },
  belowTitle: "Chosen below what the facts stated give:",
  /** An observation by where it is and the number it has in the report. */
  observation: (place: string, number: number) => `${place} (observation ${number})`,
  noPlace: "An observation without a place",
  places: (shown: readonly string[], left: number) =>
    left === 0 ? shown.join("; ") : `${shown.join("; ")}; and ${left} more`,
  circuits: (board: string, circuits: readonly string[], left: number) =>
    `${board}, ${circuits.length + left === 1 ? "circuit" : "circuits"} ${circuits.join(", ")}${left === 0 ? "" : ` and ${left} more`}`,
});

/** Words of signatures by how they stand to the content. */
export const SIGNATURE = Object.freeze({
  signed: (as: string, name: string, at: string) => `${as}: signed by ${name}, ${at}.`,
  changed: (name: string, at: string) =>
    `The content was changed after ${name} signed on ${at}: it does not count as signed for this content`,
  unbound: (name: string, at: string) =>
    `${name}, ${at}: it cannot be checked what was signed, for the signature names no content; it does not count as signed for this content`,
  title: "Signatures",
  none: "Not signed.",
});
