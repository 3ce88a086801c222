import type { Classification, Outcome } from "@good-grounds/core";
import { REPORT } from "./report-en.ts";

const counted = (count: number, one: string, several: string) => `${count} ${count === 1 ? one : several}`;

/** Words of the letter: short, plain and true; a test holds them to the reading of an eleven year old. */
export const LETTER = Object.freeze({
  day: REPORT.day,
  closed: REPORT.closed,
  when: (words: string) => `${words[0]?.toUpperCase() ?? ""}${words.slice(1)}`,
  name: "Letter to the owner",
  over: "Your electric safety test",
  to: "To",
  toOwner: "Whoever owns or lets the place",
  from: "From",
  date: "Date",
  opening: (on: string) =>
    `We tested the electrics here on ${REPORT.day(on)}. This letter tells you what we found and what to do next. The report shows why.`,
  passOn: "Please pass this on to whoever owns or lets the place. They have to see to it.",
  passOnPerhaps: "If the place is not yours to let or look after, please pass this on to whoever it is.",
  result: "The result",
  stated: Object.freeze({
    satisfactory: "The inspector calls it satisfactory. It can stay in use.",
    unsatisfactory: "The inspector calls it unsatisfactory. It is not safe enough as it is.",
  }),
  notStated: "The inspector has not yet said how it comes out.",
  derived: Object.freeze({
    satisfactory: "The facts in the report come out the same way: satisfactory.",
    unsatisfactory: "The facts in the report come out as unsatisfactory.",
    "not-determined": "The facts in the report do not settle it yet. So do not take it as safe.",
  } satisfies Record<Outcome["outcome"], string>),
  same: "The facts in the report come out the same way.",
  differs: "The two do not agree. Ask us which one stands before you act on it.",
  open: (count: number) =>
    count === 1
      ? "One point is still open. It may add to this list. The report names it."
      : `${count} points are still open. They may add to this list. The report names each one.`,
  unspoken: (count: number) =>
    `${count === 1 ? "One of them is" : `${count} of them are`} danger now by the facts, and nobody wrote of it. Call us at once.`,
  dismissed: (count: number) =>
    `${count === 1 ? "One test fell" : `${count} tests fell`} short, and the inspector calls it no danger. The report says why.`,
  nothingInspected:
    "Nothing was looked at or tested, as far as is written down. So this letter does not say that it is safe.",
  earthingOff:
    "The main earth wire may still be off. Have it checked before you do anything else. Until then, any metal part could give a shock.",
  nothing: "We found nothing that needs work in what we could see.",
  todo: "What to do",
  group: Object.freeze({
    C1: "Danger found",
    C2: "Could get dangerous: have it put right soon",
    FI: "We could not tell if it is safe: have it looked at soon",
    open: "Not judged yet by the inspector",
    C3: "No danger now: it can be made better",
  } satisfies Record<Exclude<Classification, "none"> | "open", string>),
  classed: (code: string) => `The inspector's class: ${code}`,
  unclassed: "No class yet",
  stop: "Do not use it. Have it put right at once.",
  madeSafe: (at: string) => `We made it safe on ${REPORT.day(at)}. Leave it as it is. It must still be put right.`,
  whatWeDid: (done: string) => `What we did: ${REPORT.closed(done)}`,
  toldOf: (told: string, at: string) => `Who we told, at ${at.slice(11, 16)}: ${REPORT.closed(told)}`,
  untold: (reason: string) => `Nobody was told on the day: ${REPORT.closed(reason)}`,
  tellingUnsaid: "Whether it was made safe is not written down. Treat it as live.",
  found: (what: string) => `What we found: ${REPORT.closed(what)}`,
  below: (follows: string, chosen: string) => `The facts point to ${follows}. The inspector chose ${chosen}. Ask why.`,
  noClass: "no class",
  more: (count: number) => `And ${count} more of this kind. The works list names each one.`,
  only: (count: number) =>
    `There ${count === 1 ? "is one" : `are ${count}`} of this kind. The works list names each one.`,
  who: "Let a skilled electrician do the work. Give them the works list.",
  dates: "Dates to keep",
  datesHead: ["By when", "What the law asks of you"] as const,
  workWithin: (days: number, by: string) =>
    `The inspector asks for the work to be done in ${counted(days, "day", "days")}: by ${REPORT.day(by)}.`,
  check: "Check this one.",
  checkNote: "Where it says “check this one”, ask the council or a lawyer: it was not read in the text of the law.",
  ifSo: (conditions: string) => `Only if ${conditions}.`,
  moreDuties: (count: number) => `The report has ${counted(count, "more point", "more points")} of law.`,
  notAdvice: "These dates are to remind you. They are not legal advice.",
  next: (by: string) => `Have it all tested again by ${REPORT.day(by)}.`,
  noNext: "The report names no date for the next test.",
  unseen: "What we could not see or test",
  unseenMore: (count: number) => `And ${count} more. The report names each one.`,
  noneUnseen: "No limits are written down.",
  ask: "Ask us if a point is not clear. Name its number: it is the same in the report.",
  signed: (names: readonly string[]) => `Signed for in the report by ${names.join(" and ")}.`,
});
