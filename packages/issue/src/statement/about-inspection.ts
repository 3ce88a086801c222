import { forOthers, type InspectionFile, printInspection } from "@good-grounds/inspection";
import type { Layout, Statement } from "./statement.ts";
import { hashOf } from "./statement.ts";

/** A signature of the inspection file, with the name of the person. */
interface NamedSignature {
  readonly name: string;
  readonly capacity: string;
  readonly at: string;
  /** The strokes, where it was drawn. */
  readonly drawn?: string | undefined;
}

/** What is issued, as the program that issues it knows it. */
export interface Inspected {
  /** The inspection file as text, and as read. */
  readonly text: string;
  readonly file: InspectionFile;
  readonly signatures: readonly NamedSignature[];
  readonly outcome: string;
  /** The hash of the firm's own folder of topics, where one was used. */
  readonly topics: string | undefined;
  readonly release: string;
  readonly layout: Layout;
}

type AboutInspection = Pick<
  Statement,
  "report" | "evidence" | "photographs" | "topics" | "release" | "layout" | "outcome" | "signatures"
>;

/** What the statement of an issue says of the inspection itself. What is private in the file is not part of the evidence. */
export function aboutInspection({ text, file, signatures, outcome, ...made }: Inspected): AboutInspection {
  const shared = forOthers(file);
  return {
    ...made,
    report: file.id,
    evidence: hashOf(shared === file ? text : printInspection(shared)),
    photographs: [...new Set(file.photographs.map(({ sha256 }) => sha256))],
    outcome,
    signatures: signatures.map(({ name, capacity, at, drawn }) => ({
      words: `${name}; ${capacity}; ${at}`,
      drawn: drawn === undefined ? undefined : hashOf(drawn),
    })),
  };
}
