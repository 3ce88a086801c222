import type { Issued } from "../pdf/issued.ts";
import type { IssueRecord } from "../statement/record.ts";
import type { Answer } from "./answers.ts";

/** The most a device's clock may be before a time authority's, in ms, before it is told: ten minutes. */
const APART = 600_000;

/** When, and by whose word. */
export function when({ statement }: IssueRecord, { time, alone }: Issued): Answer {
  const question = "when";
  const said = `${statement.at}, by the clock of: ${statement.clock}.`;
  if (!statement.timeAuthority)
    return { question, standing: "holds", words: [said, "No time authority was asked: nobody else says so."] };
  if (alone === true)
    return { question, standing: "open", words: [said, "A time authority was asked; its answer is in the document."] };
  if (time === undefined || !time.fits)
    return {
      question,
      standing: "against",
      words: [said, "A time authority was asked, but its answer is missing or does not fit."],
    };
  const words = [
    said,
    `A time authority that calls itself ${time.by} saw the signature at ${time.at.toISOString()}. Whether it is one, is not looked at here.`,
  ];
  const isApart = Math.abs(time.at.getTime() - Date.parse(statement.at)) > APART;
  return {
    question,
    standing: isApart ? "against" : "holds",
    words: isApart ? [...words, "The two do not agree."] : words,
  };
}
