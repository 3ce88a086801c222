import type { IssueRecord } from "../statement/record.ts";
import type { Answer, Known } from "./answers.ts";

/** Whether it is the latest issue of its report, among those handed in. */
export function latest({ statement, hash }: IssueRecord, { issues }: Known): Answer {
  const question = "latest";
  const of = issues.filter((one) => one.signed && one.statement.report === statement.report && one.hash !== hash);
  const replacing = of.find((one) => one.statement.replaces === hash);
  const number = `Issue ${statement.number} of report ${statement.report}`;
  if (replacing !== undefined)
    return {
      question,
      standing: "against",
      words: [`${number}: replaced by issue ${replacing.statement.number} of ${replacing.statement.at}.`],
    };
  const later = of.find((one) => one.statement.number > statement.number);
  if (later !== undefined)
    return {
      question,
      standing: "against",
      words: [`${number}: a later one was handed in, issue ${later.statement.number} of ${later.statement.at}.`],
    };
  const twin = of.find((one) => one.statement.number === statement.number);
  if (twin !== undefined)
    return {
      question,
      standing: "against",
      words: [`${number}: another issue of that number was handed in, of ${twin.statement.at}.`],
    };
  const { replaces } = statement;
  const replaced = of.some((one) => one.hash === replaces);
  const words = [
    of.length === 0
      ? `${number}. No other issue of it was handed in: whether there is a later one is not known here.`
      : `${number}: the latest of the ${of.length + 1} handed in.`,
    ...(replaces === undefined
      ? []
      : [
          `It replaces ${replaced ? "an issue handed in" : "an issue that was not handed in"} (${replaces.slice(0, 16)}).`,
        ]),
  ];
  return { question, standing: of.length === 0 ? "open" : "holds", words };
}
