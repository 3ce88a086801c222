import type { PublicKey, Secrets } from "../keys/key-file.ts";
import type { Register } from "../keys/register.ts";
import { type IssueRecord, readRecord, writeRecord } from "../statement/record.ts";
import { hashOf, type Statement } from "../statement/statement.ts";
import { certificateHash, type Signer, sealPdf, type TimestampAuthority } from "./seal.ts";

/** What a statement says of the job, before it is known what lies behind the signature. */
export type About = Omit<Statement, "pages" | "pagesLength" | "timeAuthority" | "key" | "certificate">;

/** With what an issue is signed. */
export interface SignedWith {
  readonly key: PublicKey;
  readonly secrets: Secrets;
  /** Signs the document: with the certificate of the key, or with one that somebody else issued. */
  readonly signer: Signer;
  readonly register?: Register | undefined;
  readonly authority?: TimestampAuthority | undefined;
}

/** One issue: the document, the record attached to it, and that record as read. */
export interface IssuedDocument {
  readonly document: Uint8Array;
  readonly written: Uint8Array;
  readonly record: IssueRecord;
}

/** Signs the statement of an issue over pages that are laid out, and the document that carries both. */
export async function issueDocument(about: About, pages: Uint8Array, by: SignedWith): Promise<IssuedDocument> {
  const { key, secrets, signer, register, authority } = by;
  const statement: Statement = {
    ...about,
    pages: hashOf(pages),
    pagesLength: pages.length,
    timeAuthority: authority !== undefined,
    key: key.key,
    certificate: certificateHash(signer),
  };
  const written = writeRecord(statement, secrets.statement, register?.text);
  const document = await sealPdf(pages, written, new Date(statement.at), signer, authority);
  return { document, written, record: readRecord(written) };
}
