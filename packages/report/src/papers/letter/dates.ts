import type { Duty } from "@good-grounds/core";
import type { Block, Words } from "../../document/model.ts";
import type { ReportInput } from "../../input.ts";
import { DUTY } from "../../locales/duties-en.ts";
import { LETTER_DUTY } from "../../locales/letter-duties-en.ts";
import { LETTER } from "../../locales/letter-en.ts";
import { dutyWords } from "../../words/duty.ts";

/** Duties with a time that stand in the letter; the report has all of them. */
const SHOWN = 4;

/** Times that somebody can act by; what holds at all times stands in the report. */
const DATED: ReadonlySet<Duty["time"]["kind"]> = new Set(["by", "before", "next", "at-once"]);

/** By when what has to be done: what the inspector asks, what the law asks, and the next inspection. */
export function dates(input: ReportInput): readonly Block[] {
  const { duties, installation } = input;
  const others = duties.filter(({ who }) => who !== "inspector");
  const dated = others.filter(({ time }) => DATED.has(time.kind));
  const shown = dated.length > SHOWN + 1 ? dated.slice(0, SHOWN) : dated;
  const left = others.length - shown.length;
  const { conclusion } = installation.file;
  const next = conclusion?.nextInspection?.by;
  const within = conclusion?.workWithin;
  const asks = others.some(({ time: { kind } }) => kind === "next");
  return [
    { kind: "heading", level: 1, words: LETTER.dates, unlisted: true },
    ...paragraphs([
      within === undefined ? "" : LETTER.workWithin(within.days, lastDay(installation.file.inspectedOn, within.days)),
      asks && next !== undefined ? "" : next === undefined ? LETTER.noNext : LETTER.next(next),
    ]),
    ...(shown.length === 0 ? [] : [table(shown)]),
    ...paragraphs([
      [
        left > 0 ? LETTER.moreDuties(left) : "",
        shown.some(isUnsure) ? LETTER.checkNote : "",
        others.length > 0 ? LETTER.notAdvice : "",
      ]
        .filter((words) => words !== "")
        .join(" "),
    ]),
  ];
}

function paragraphs(words: readonly string[]): readonly Block[] {
  return words.filter((one) => one !== "").map((one) => ({ kind: "paragraph", words: one }));
}

function table(shown: readonly Duty[]): Block {
  const [when, what] = LETTER.datesHead;
  return {
    kind: "table",
    columns: [
      { head: when, width: "2fr" },
      { head: what, width: "5fr" },
    ],
    rows: shown.map((duty) => [LETTER.when(dutyWords(duty).when), asked(duty)]),
    size: 9.5,
  };
}

function asked(duty: Duty): Words {
  const conditions = duty.onlyIf.map((one) => DUTY.condition[one]);
  return [
    LETTER_DUTY[duty.id],
    ...(conditions.length === 0 ? [] : [LETTER.ifSo(DUTY.list(conditions))]),
    ...(isUnsure(duty) ? [LETTER.check] : []),
  ].join(" ");
}

/** A duty that nobody read in the text of the law, or that is doubtful there: the reader is told to check it. */
function isUnsure({ source: { basis, doubt } }: Duty): boolean {
  return basis === "memory" || doubt !== undefined;
}

/** The last of so many days, the first of which is this one. */
function lastDay(first: string, days: number): string {
  return new Date(Date.parse(`${first}T00:00:00Z`) + (days - 1) * 86_400_000).toISOString().slice(0, 10);
}
