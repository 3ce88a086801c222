import { membersOf } from "../../record/document.ts";
import type { Record as JobRecord } from "../../record/record.ts";
import type { HowFar } from "../../shell/screens.ts";
import { PEOPLE } from "../../words/people.ts";

export function peopleHowFar(record: JobRecord): HowFar {
  const [people, instruments] = [membersOf(record, "people").length, membersOf(record, "instruments").length];
  return { words: PEOPLE.far(people, instruments), done: people > 0 && instruments > 0 };
}
