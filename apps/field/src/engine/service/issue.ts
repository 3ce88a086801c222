import { RELEASE } from "@good-grounds/core";
import {
  type Given,
  type IssueRecord,
  issueName,
  NOT_SHOWN,
  newestOf,
  openKeyFile,
  QUESTION,
  readPublicKey,
  readRecord,
  readRegister,
  StatementFault,
  standsIn,
  type Verified,
  verifiedOf,
  whyNotAgain,
  writePublicKey,
} from "@good-grounds/issue";
import { type Issued, issueDocument, newKey, readGiven, readIssued, signerOf } from "@good-grounds/issue/pdf";
import type { Topics } from "@good-grounds/topics";
import { ISSUE } from "../../words/issue.ts";
import type { ToIssue } from "../../writer/to-issue.ts";
import type {
  CheckedFiles,
  CheckedView,
  FileToCheck,
  IssueAsked,
  IssueMade,
  KeyView,
  RegisterTried,
} from "../issue-view.ts";

/** The part of the engine that lays reports out: it comes by itself, since few who check a report write one. */
export interface Layout {
  readonly toIssue: (json: string, reasons: IssueAsked["reasons"], topics?: Topics) => Promise<ToIssue>;
  readonly writeIssue: (
    json: string,
    issue: { readonly number: number; readonly replaces: string | undefined },
    topics?: Topics,
  ) => Promise<Uint8Array>;
}

/** A new key for one person on this device, as an encrypted key file. */
export function makeKey(person: string, device: string, passphrase: string, made: string): Promise<string> {
  return newKey({ person, device, made }, passphrase);
}

export function keyView(text: string): KeyView {
  const { certificate, ...open } = readPublicKey(text);
  return { ...open, publicPart: writePublicKey({ ...open, certificate }) };
}

/** Reads a register of keys. One that its root did not sign is not taken. */
export function tryRegister(text: string): RegisterTried {
  try {
    const { root, number, keys, signed } = readRegister(text);
    if (!signed) return { isWell: false, why: ISSUE.registerChanged };
    return { isWell: true, root, number, keys: keys.length };
  } catch (error) {
    return { isWell: false, why: faultOf(error) };
  }
}

/** Issues a report on this device, and reads back what was made before it is handed on. */
export async function issue(asked: IssueAsked, layout: Layout, topics?: Topics): Promise<IssueMade> {
  const { json, reasons, key: keyText, passphrase, at } = asked;
  try {
    const key = readPublicKey(keyText);
    const register = asked.register === undefined ? undefined : readRegister(asked.register);
    if (register !== undefined && !standsIn(register, key.key, at)) return refused(ISSUE.notInRegister);
    const stated = await layout.toIssue(json, reasons, topics);
    if ("why" in stated) return { made: false, why: stated.why };
    const secrets = await openKeyFile(keyText, passphrase);
    const before = asked.before.map((text) => readRecord(new TextEncoder().encode(text)));
    const about = { ...stated.about, reasons: stated.reasons, ...placeAmong(before, stated.about.report), at };
    const signer = await signerOf(bytesOf(key.certificate), secrets.document);
    const { number, replaces } = about;
    const pages = await layout.writeIssue(json, { number, replaces }, topics);
    const by = { key, secrets, signer, register };
    const whole = { ...about, earlier: [], clock: "the device that issued it" };
    const { document, written } = await issueDocument(whole, pages, by);
    const { faults } = await readIssued(document, RELEASE);
    if (faults.length > 0) return { made: false, why: [ISSUE.notAsSigned, ...faults] };
    const { report } = about;
    const record = new TextDecoder().decode(written);
    return { made: true, report, number, name: issueName(report, number), document, record };
  } catch (error) {
    if (error instanceof StatementFault) return refused(faultOf(error));
    throw error;
  }
}

/** Which number an issue gets, what it replaces, and what was issued before it. */
function placeAmong(before: readonly IssueRecord[], report: string) {
  const replaced = newestOf(before.filter(({ statement }) => statement.report === report));
  return {
    number: (replaced?.statement.number ?? 0) + 1,
    replaces: replaced?.hash,
    previous: newestOf(before)?.hash,
  };
}

/** The five answers on every issued document among the files. */
export async function check(
  files: readonly FileToCheck[],
  root: string | undefined,
  layout: Layout,
  topics?: Topics,
): Promise<CheckedFiles> {
  const given: Given[] = [];
  const unread: string[] = [];
  for (const { name, bytes } of files)
    try {
      given.push(await readGiven(name, bytes, RELEASE));
    } catch (error) {
      if (!(error instanceof StatementFault)) throw error;
      unread.push(`${name}: ${faultOf(error)}`);
    }
  const madeAgain = (issued: Issued) => pagesAgain(issued, layout, topics);
  const documents = await verifiedOf(given, { root, madeAgain });
  return { documents: documents.map(viewOf), unread, notShown: NOT_SHOWN };
}

async function pagesAgain({ record, evidence, pages }: Issued, { writeIssue }: Layout, topics: Topics | undefined) {
  if (record === undefined || evidence === undefined || pages === undefined) return { not: ISSUE.noPages };
  const here = { release: RELEASE, layout: "device", topics: topics?.folder?.hash, earlier: [] } as const;
  const not = whyNotAgain(record.statement, here);
  if (not !== undefined) return { not };
  try {
    const json = new TextDecoder("utf-8", { ignoreBOM: true }).decode(evidence);
    const { number, replaces } = record.statement;
    return await writeIssue(json, { number, replaces }, topics);
  } catch (error) {
    return { not: ISSUE.notLaidOut(error instanceof Error ? error.message : String(error)) };
  }
}

function viewOf({ name, record, answers }: Verified): CheckedView {
  const statement = record?.statement;
  return {
    name,
    says: statement === undefined ? undefined : ISSUE.says(statement.report, statement.number, statement.outcome),
    answers: answers.map(({ question, standing, words }) => ({ question: QUESTION[question], standing, words })),
    reasons: record?.signed === true ? record.statement.reasons : [],
  };
}

const refused = (why: string): IssueMade => ({ made: false, why: [why] });

function faultOf(error: unknown): string {
  const words = error instanceof Error ? error.message : String(error);
  return `${words.slice(0, 1).toUpperCase()}${words.slice(1)}.`;
}

function bytesOf(hex: string): Uint8Array {
  return Uint8Array.from(hex.match(/../g) ?? [], (digits) => Number.parseInt(digits, 16));
}
