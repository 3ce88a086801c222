import { keepTwice, keptTwice } from "../record/kept-twice.ts";
import { keepSetting, setting } from "../record/store.ts";

const KEY = "signing-key";
const REGISTER = "firm-register";
const ISSUES = "issues";

/** One issue that was made on this device. Its record says everything; the rest is for the list. */
export interface KeptIssue {
  readonly report: string;
  readonly number: number;
  readonly at: string;
  readonly name: string;
  readonly record: string;
}

/** The key file of this device, encrypted as it is. */
export const keptKey = () => keptTwice<string>(KEY);

/** Keeps a key file, or takes it off the device with null. */
export const keepKey = (text: string | null) => keepTwice(KEY, text);

/** The register of the firm's keys on this device. */
export const keptRegister = () => keptTwice<string>(REGISTER);

export const keepRegister = (text: string | null) => keepTwice(REGISTER, text);

/** Everything issued on this device, in the order it was made. */
export const keptIssues = async () => (await keptTwice<readonly KeptIssue[]>(ISSUES)) ?? [];

/** Documents are large and are handed on at once: the database alone keeps them. */
const documentOf = ({ report, number }: Pick<KeptIssue, "report" | "number">) => `issued ${number} ${report}`;

/**
 * Keeps an issue and its document. Nothing kept before is changed or taken out. Where there is no room for the document
 * its record is kept all the same, since the next issue has to name it; then this fails with the reason.
 */
export async function keepIssue(issue: KeptIssue, document: Uint8Array): Promise<void> {
  const blob = new Blob([document as BlobPart], { type: "application/pdf" });
  const whole = keepSetting(documentOf(issue), blob, "strict");
  await whole.catch(() => undefined);
  await keepTwice(ISSUES, [...(await keptIssues()), issue]);
  await whole;
}

/** The document of an issue; undefined where it is not on this device any more. */
export function keptDocument(issue: KeptIssue): Promise<Blob | undefined> {
  return setting<Blob>(documentOf(issue)).catch(() => undefined);
}
