import type { Register } from "../keys/register.ts";
import type { Issued } from "../pdf/issued.ts";
import type { IssueRecord } from "../statement/record.ts";
import { latest } from "./latest.ts";
import { when } from "./when.ts";
import { who } from "./who.ts";

/** How an answer stands: it holds, something was found against it, or it is not known here. */
export type Standing = "holds" | "against" | "open";

/** One of the five answers. */
export interface Answer {
  readonly question: "as-signed" | "who" | "when" | "latest" | "pages";
  readonly standing: Standing;
  readonly words: readonly string[];
}

/** The questions as they are asked. */
export const QUESTION: Readonly<Record<Answer["question"], string>> = {
  "as-signed": "Is it as signed?",
  who: "By whom?",
  when: "When, and by whose word?",
  latest: "Is it the latest known?",
  pages: "Do the pages follow from the evidence?",
};

/** What whoever asks has beside the document. */
export interface Known {
  /** Every issue that was handed in together with this one. */
  readonly issues: readonly IssueRecord[];
  /** A register of the firm that did not come with the document. */
  readonly register?: Register | undefined;
  /** The public half of the firm's paper root, as the firm gave it. */
  readonly root?: string | undefined;
  /** Photographs that were handed in, by name and hash. */
  readonly photographs?: readonly { readonly name: string; readonly hash: string }[];
  /** Inspection files that were handed in, by name and hash. */
  readonly evidence?: readonly { readonly name: string; readonly hash: string }[];
  /** The pages made again from the attached evidence; or why they were not. */
  readonly madeAgain: Uint8Array | { readonly not: string };
}

/** What no answer says: printed with each of them. */
export const NOT_SHOWN: readonly string[] = [
  "That readings and statements are true: only that they are the ones that were signed.",
  "That the person named held the key at that moment, or that a device's clock was right.",
  "That nothing was issued later which was not handed in here.",
];

/** The five answers on a document, in their order. There is no single one: each stands for itself. */
export function answers(issued: Issued, known: Known): readonly Answer[] {
  const { record } = issued;
  const first = asSigned(issued, known);
  if (record === undefined || !record.signed) {
    const words = ["Not known: the document carries no statement that its signature fits."];
    const open = (question: Answer["question"]): Answer => ({ question, standing: "open", words });
    return [first, open("who"), open("when"), open("latest"), open("pages")];
  }
  return [first, who(record, issued, known), when(record, issued), latest(record, known), pages(issued, known)];
}

function asSigned(
  { record, alone, faults, notCompared = [] }: Issued,
  { photographs = [], evidence = [] }: Known,
): Answer {
  const listed = record?.statement.photographs ?? [];
  const strange = photographs
    .filter(({ hash }) => !listed.includes(hash))
    .map(({ name }) => `${name}: not one of the photographs the statement names, or changed since.`);
  const otherEvidence = evidence
    .filter(({ hash }) => hash !== record?.statement.evidence)
    .map(({ name }) => `${name}: not the inspection file the statement names, or changed since.`);
  const against = [...faults, ...(record === undefined ? [] : [...strange, ...otherEvidence])];
  if (against.length > 0) return { question: "as-signed", standing: "against", words: against };
  if (notCompared.length > 0) {
    const words = ["Pages and statement are as signed.", ...notCompared];
    return { question: "as-signed", standing: "open", words };
  }
  if (alone === true) {
    const words = ["The statement is as signed. The document it speaks of was not handed in."];
    return { question: "as-signed", standing: "open", words };
  }
  const seen = new Set(photographs.map(({ hash }) => hash));
  const held = listed.filter((hash) => seen.has(hash)).length;
  const words = ["Yes: no byte of the document differs from what was signed."];
  const pictures = listed.length === 0 ? [] : [`Photographs named: ${listed.length}; handed in and the same: ${held}.`];
  return { question: "as-signed", standing: "holds", words: [...words, ...pictures] };
}

function pages({ pages: as }: Issued, { madeAgain }: Known): Answer {
  const question = "pages";
  if (as === undefined)
    return { question, standing: "open", words: ["Not compared: the pages are not those that were signed."] };
  if ("not" in madeAgain) return { question, standing: "open", words: [`Not compared: ${madeAgain.not}`] };
  const differs = madeAgain.length !== as.length || madeAgain.some((byte, i) => byte !== as[i]);
  if (differs)
    return {
      question,
      standing: "against",
      words: ["No: made again from the attached evidence, the pages come out otherwise."],
    };
  const words = ["Yes: made again from the attached evidence, the pages came out the same to the last byte."];
  return { question, standing: "holds", words };
}
