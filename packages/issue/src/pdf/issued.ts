import { StatementFault } from "../statement/lines.ts";
import { type IssueRecord, readRecord } from "../statement/record.ts";
import { hashOf } from "../statement/statement.ts";
import { sealedAgain } from "./again.ts";
import { loadAsItStands } from "./load.ts";
import { certificateHash, RECORD_NAME } from "./seal.ts";
import { signatureIn } from "./signature-in.ts";
import { type TimeWord, timeWord } from "./time-token.ts";

/** What was found at a document that was handed in. `faults` is empty where it is as it was signed, to the last byte. */
export interface Issued {
  /** The record it carries; undefined where there is none that can be read. */
  readonly record: IssueRecord | undefined;
  /** Set where the record was handed in without its document. */
  readonly alone?: true;
  /** The document as it was laid out, where its hash is that of the statement. */
  readonly pages: Uint8Array | undefined;
  /** The inspection file in those pages. */
  readonly evidence: Uint8Array | undefined;
  readonly time: TimeWord | undefined;
  /** What was changed, and where. */
  readonly faults: readonly string[];
  /** What could not be compared, and why. */
  readonly notCompared?: readonly string[];
}

const NOTHING = { record: undefined, pages: undefined, evidence: undefined, time: undefined };

/**
 * Looks at a document. `release` is that of this program: what another one wrote around the pages need not come out the same
 * here, so a difference there is told as not compared. Otherwise everything in it but the signature values is made again from
 * its parts and compared.
 */
export async function readIssued(file: Uint8Array, release: string): Promise<Issued> {
  const attached = await attachmentIn(file, RECORD_NAME);
  if (attached === "unreadable")
    return { ...NOTHING, faults: ["The document cannot be read: it was changed, or it is no PDF."] };
  if (attached === undefined)
    return {
      ...NOTHING,
      faults: ["The document carries no statement of issue: it was never issued, or the signature was stripped."],
    };
  let record: IssueRecord;
  try {
    record = readRecord(attached);
  } catch (error) {
    if (!(error instanceof StatementFault)) throw error;
    return { ...NOTHING, faults: [`The statement of issue cannot be read: ${error.message}.`] };
  }
  if (!record.signed)
    return { ...NOTHING, record, faults: ["The statement of issue was changed: its signature does not fit it."] };
  const { statement } = record;
  const pages = file.subarray(0, statement.pagesLength);
  if (hashOf(pages) !== statement.pages)
    return { ...NOTHING, record, faults: [`The pages were changed, within the first ${statement.pagesLength} bytes.`] };
  const evidence = await attachmentIn(pages, "inspection.json");
  const held = evidence instanceof Uint8Array ? evidence : undefined;
  const faults =
    held !== undefined && hashOf(held) === statement.evidence
      ? []
      : ["The attached inspection file is another than the statement names."];
  const rest = await signatureFaults(file, pages, attached, record, release);
  return {
    record,
    pages,
    evidence: held,
    time: rest.time,
    faults: [...faults, ...rest.faults],
    notCompared: rest.notCompared ?? [],
  };
}

async function signatureFaults(
  file: Uint8Array,
  pages: Uint8Array,
  attached: Uint8Array,
  { statement }: IssueRecord,
  release: string,
): Promise<Pick<Issued, "time" | "faults" | "notCompared">> {
  const found = signatureIn(file, pages.length);
  if (found === undefined)
    return { time: undefined, faults: ["The signature on the document is missing or cannot be read."] };
  const faults: string[] = [];
  const certificate = certificateHash({ certificate: found.certificate, certificateChain: [...found.chain] });
  if (certificate !== statement.certificate)
    faults.push("The document was signed with another certificate than the statement names.");
  const at = new Date(statement.at);
  const again = await sealedAgain(pages, attached, at, found).catch(() => undefined);
  const where = again === undefined ? undefined : firstDifference(file, again.bytes);
  const isSameRelease = statement.release === release;
  if (again === undefined || (!again.signed && (isSameRelease || where === undefined)))
    faults.push("The signature on the document does not fit it.");
  const differs = where === undefined ? [] : [differenceWords(where, file.length, again?.bytes.length ?? 0)];
  if (isSameRelease) faults.push(...differs);
  else if (!reachesTheEnd(file, pages.length))
    faults.push("The signature on the document does not reach its last byte.");
  const notCompared =
    isSameRelease || where === undefined
      ? []
      : [
          `What stands around the pages was written by release ${statement.release}; this is ${release} and writes it otherwise.`,
        ];
  const time = found.token === undefined ? undefined : await timeWord(found.token, found.value);
  if (
    (found.token !== undefined) !== statement.timeAuthority ||
    (time === undefined ? statement.timeAuthority : !time.fits)
  )
    faults.push("What the time authority said is missing, was added later, or does not fit this signature.");
  return { time, faults, notCompared };
}

/** Whether the signature added after the pages says that it covers everything but itself, up to the last byte. */
function reachesTheEnd(file: Uint8Array, from: number): boolean {
  const added = new TextDecoder("latin1").decode(file.subarray(from));
  const [, start = "", second = "", length = ""] =
    /\/ByteRange\s*\[\s*0\s+(\d+)\s+(\d+)\s+(\d+)\s*\]/.exec(added) ?? [];
  return Number(start) > from && Number(second) > Number(start) && Number(second) + Number(length) === file.length;
}

function differenceWords(where: number, length: number, expected: number): string {
  if (where >= expected) return `Something was added after the last byte that was signed: ${length - expected} bytes.`;
  if (where >= length) return `The end is missing: ${expected - length} bytes.`;
  return `The frame of statement and signature was changed, first at byte ${where}.`;
}

function firstDifference(one: Uint8Array, other: Uint8Array): number | undefined {
  const most = Math.max(one.length, other.length);
  for (let i = 0; i < most; i++) if (one[i] !== other[i]) return i;
  return undefined;
}

/** A file attached to a document: its bytes, undefined where there is none, or "unreadable". */
async function attachmentIn(file: Uint8Array, name: string): Promise<Uint8Array | undefined | "unreadable"> {
  try {
    return (await loadAsItStands(file)).getAttachment(name) ?? undefined;
  } catch {
    return "unreadable";
  }
}
