import type { Duty } from "@good-grounds/core";
import type { ReportInput } from "../../input.ts";
import { DUTY } from "../../locales/duties-en.ts";
import { dutyLine, dutyWords, passOnWords } from "../../words/duty.ts";

/** Duties on the first page before the rest are counted. */
const SHOWN = 3;

/** What the law asks, in a few lines for the first page: what applies and has a date, what presses first. */
export function dutiesOnFirst({ duties, installation }: ReportInput) {
  // That danger was told stands beside the danger.
  const told = duties.filter(({ who }) => who !== "inspector");
  const shown = told.slice(0, SHOWN);
  const left = told.length - shown.length;
  return {
    "law-title": DUTY.title,
    "law-note": [DUTY.short, passOnWords(installation)].filter((words) => words !== "").join(" "),
    law:
      told.length === 0
        ? [DUTY.nothing]
        : [...shown.map((duty) => dutyLine(duty)), ...(left > 0 ? [DUTY.more(left)] : [])],
  };
}

/** Every duty with its statute, what is not certain about it, and how its date was counted. */
export function duties({ duties: all, installation }: ReportInput) {
  const group = (title: string, members: readonly Duty[]) =>
    members.length === 0 ? [] : [{ title, rows: members.map(row) }];
  const isSure = ({ onlyIf }: Duty) => onlyIf.length === 0;
  return {
    title: DUTY.title,
    intro: [DUTY.notAdvice, passOnWords(installation), ...(all.length === 0 ? [DUTY.nothing] : [])].filter(
      (words) => words !== "",
    ),
    head: DUTY.head,
    groups: [
      ...group(DUTY.sureTitle, all.filter(isSure)),
      ...group(
        DUTY.perhapsTitle,
        all.filter((duty) => !isSure(duty)),
      ),
    ],
  };
}

function row(duty: Duty): readonly string[] {
  const { when, asks, onlyIf, grounds } = dutyWords(duty);
  return [when, [onlyIf, asks].filter((words) => words !== "").join(" "), grounds];
}
