import type { ReportInput } from "../../input.ts";
import { LETTER } from "../../locales/letter-en.ts";
import { REPORT } from "../../locales/report-en.ts";
import { capitalised, codeOf } from "../../pdf/sections/observation-order.ts";
import { shortened } from "../../pdf/sections/shortened.ts";
import { firstSentence } from "../../words/first-sentence.ts";
import { GROUPS, type Group, type Numbered, numbered, type Observation } from "../../words/observation-number.ts";
import { clientSentence } from "../../words/reasoning.ts";

/** One thing found, in plain words. */
export interface LetterPoint {
  /** The number of the observation in the report. */
  readonly number: number;
  readonly place: string;
  readonly words: string;
  /** That the facts point to more than was chosen; empty where they do not. */
  readonly below: string;
  /** What holds of danger: that it was made safe, or that it is not to be used; empty where there is none. */
  readonly safe: string;
  /** What was done and who was told; empty where nothing is to be said of it. */
  readonly done: string;
}

export interface LetterGroup {
  readonly group: Exclude<Group, "none">;
  readonly code: string;
  readonly points: readonly LetterPoint[];
  /** How many more there are of the kind. */
  readonly left: number;
}

/** Points that stand in the letter in full: more would take it beyond two pages. The worst come first. */
const SHOWN = 12;
/** Of what is better improved, fewer. */
const SHOWN_BETTER = 4;
const PLACE_LENGTH = 80;
const WORDS_LENGTH = 200;

/** What was found, worst first. */
export function letterGroups(input: ReportInput): readonly LetterGroup[] {
  const all = numbered(input.installation.file);
  let room = SHOWN;
  return GROUPS.flatMap((group): readonly LetterGroup[] => {
    const members = all.filter((one) => one.group === group);
    if (group === "none" || members.length === 0) return [];
    const most = Math.min(room, group === "C3" ? SHOWN_BETTER : SHOWN);
    // One alone is told sooner than counted.
    const shown = members.length === most + 1 && most > 0 ? members : members.slice(0, most);
    room = Math.max(0, room - shown.length);
    return [
      {
        group,
        code: codeOf(group),
        points: shown.map((one) => pointOf(one, input)),
        left: members.length - shown.length,
      },
    ];
  });
}

function pointOf({ number, group, observation: one }: Numbered, input: ReportInput): LetterPoint {
  const { outcome } = input;
  return {
    number,
    place: REPORT.closed(capitalised(shortened(one.place, PLACE_LENGTH))),
    words: plainWords(one, input),
    below: outcome.below
      .filter(({ observation }) => observation === one.id)
      .map(({ follows, chosen }) => LETTER.below(follows, chosen === "none" ? LETTER.noClass : chosen))
      .join(" "),
    safe: safeWords(group, one),
    done: doneWords(group, one),
  };
}

/** The plain sentence where one is known to be true; else, and of what was made safe, the inspector's own words. */
function plainWords(one: Observation, { reasoned }: ReportInput): string {
  const topic = reasoned.find(({ observation }) => observation === one.id);
  const plain = topic === undefined || one.madeSafe !== undefined ? "" : clientSentence(topic);
  return plain === "" ? LETTER.found(shortened(firstSentence(one.what), WORDS_LENGTH)) : plain;
}

function safeWords(group: Group, { madeSafe }: Observation): string {
  if (madeSafe !== undefined) return LETTER.madeSafe(madeSafe.at);
  return group === "C1" ? LETTER.stop : "";
}

function doneWords(group: Group, { madeSafe, untold }: Observation): string {
  if (madeSafe !== undefined) {
    const { done, told, at } = madeSafe;
    return `${LETTER.whatWeDid(shortened(done, WORDS_LENGTH))} ${LETTER.toldOf(shortened(told, PLACE_LENGTH), at)}`;
  }
  if (group !== "C1") return "";
  return untold === undefined ? LETTER.tellingUnsaid : LETTER.untold(shortened(untold, PLACE_LENGTH));
}
