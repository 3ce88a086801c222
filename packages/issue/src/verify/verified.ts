import type { Register } from "../keys/register.ts";
import type { Issued } from "../pdf/issued.ts";
import type { IssueRecord } from "../statement/record.ts";
import { type Answer, answers, type Known } from "./answers.ts";

/** One file handed in, by what it is. `name` is how whoever handed it in calls it. */
export type Given =
  | { readonly kind: "document"; readonly name: string; readonly issued: Issued }
  | { readonly kind: "record"; readonly name: string; readonly record: IssueRecord }
  | { readonly kind: "register"; readonly name: string; readonly register: Register }
  | { readonly kind: "evidence" | "photograph"; readonly name: string; readonly hash: string };

/** One document or record with its answers. */
export interface Verified {
  readonly name: string;
  readonly record: IssueRecord | undefined;
  readonly answers: readonly Answer[];
}

/** What is known beside the files: the firm's register and root, and how the pages of an issue are made again. */
export interface Beside {
  readonly register?: Register | undefined;
  readonly root?: string | undefined;
  readonly madeAgain: (issued: Issued) => Promise<Known["madeAgain"]>;
}

/** The answers on every document among the files, and on every record whose document is not among them. */
export async function verifiedOf(
  given: readonly Given[],
  { register, root, madeAgain }: Beside,
): Promise<readonly Verified[]> {
  const documents = given.filter((one) => one.kind === "document");
  const recordsAlone = given
    .filter((one) => one.kind === "record")
    .filter(({ record }) => !documents.some(({ issued }) => issued.record?.hash === record.hash))
    .map(({ name, record }) => ({ name, issued: recordAlone(record) }));
  const handedIn = [...documents, ...recordsAlone];
  const named = (kind: "evidence" | "photograph") =>
    given.flatMap((one) => (one.kind === kind ? [{ name: one.name, hash: one.hash }] : []));
  const known = {
    issues: handedIn.flatMap(({ issued: { record } }) => (record === undefined ? [] : [record])),
    register: register ?? given.find((one) => one.kind === "register")?.register,
    root,
    photographs: named("photograph"),
    evidence: named("evidence"),
  };
  const verified: Verified[] = [];
  for (const { name, issued } of handedIn)
    verified.push({
      name,
      record: issued.record,
      answers: answers(issued, { ...known, madeAgain: await madeAgain(issued) }),
    });
  return verified;
}

/** A record that was handed in without its document. */
function recordAlone(record: IssueRecord): Issued {
  const faults = record.signed ? [] : ["The statement of issue was changed: its signature does not fit it."];
  return { record, alone: true, pages: undefined, evidence: undefined, time: undefined, faults };
}
