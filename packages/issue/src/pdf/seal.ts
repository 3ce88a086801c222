import {
  CryptoKeySigner,
  HttpTimestampAuthority,
  P12Signer,
  type PDF,
  PdfArray,
  PdfDict,
  PdfName,
  PdfRef,
  type Signer,
  type TimestampAuthority,
} from "@libpdf/core";
import { concatBytes } from "@noble/hashes/utils.js";
import { hashOf } from "../statement/statement.ts";
import { loadAsItStands } from "./load.ts";

export type { Signer, TimestampAuthority };

/** The name of the attached record. */
export const RECORD_NAME = "issue.json";

/** Signs with the self-issued certificate of a key. */
export async function signerOf(certificate: Uint8Array, secret: Uint8Array): Promise<Signer> {
  const algorithm = { name: "ECDSA", namedCurve: "P-256" };
  const key = await globalThis.crypto.subtle.importKey("pkcs8", new Uint8Array(secret), algorithm, false, ["sign"]);
  return new CryptoKeySigner(key, certificate, "EC", "ECDSA");
}

/** Signs with a certificate somebody else issued, from a PKCS #12 file. Throws where the password is another. */
export function signerOfP12(file: Uint8Array, password: string): Promise<Signer> {
  return P12Signer.create(file, password);
}

/** The hash by which a statement names the certificates of the signature on the document. */
export function certificateHash({
  certificate,
  certificateChain = [],
}: Pick<Signer, "certificate" | "certificateChain">): string {
  return hashOf(concatBytes(certificate, ...certificateChain));
}

/**
 * Adds the record and one signature to a document, after its last byte and without touching any before. The same document,
 * record, moment, certificate and signature value give the same bytes, which is how a reader finds any other.
 */
export async function sealPdf(
  pages: Uint8Array,
  record: Uint8Array,
  at: Date,
  signer: Signer,
  authority?: TimestampAuthority,
): Promise<Uint8Array> {
  const pdf = await loadAsItStands(pages);
  const description = "What was issued, by hash, and who signed for it";
  pdf.addAttachment(RECORD_NAME, record, { mimeType: "application/json", description, createdAt: at, modifiedAt: at });
  associate(pdf);
  const { bytes } = await pdf.sign({
    signer,
    signingTime: at,
    fieldName: "Issue",
    digestAlgorithm: "SHA-256",
    ...(authority === undefined ? { level: "B-B" } : { level: "B-T", timestampAuthority: authority }),
  });
  return bytes;
}

/** Names the record among the files of the document, as PDF/A-3 asks of each attachment. */
function associate(pdf: PDF): void {
  const catalog = pdf.getCatalog();
  const resolve = (ref: PdfRef) => pdf.getObject(ref);
  const names = catalog.getDict("Names", resolve)?.getDict("EmbeddedFiles", resolve)?.getArray("Names", resolve);
  const files = catalog.getArray("AF", resolve);
  for (let i = 0; names !== undefined && i < names.length; i++) {
    const ref = names.at(i);
    const file = ref instanceof PdfRef ? resolve(ref) : undefined;
    if (
      !(ref instanceof PdfRef) ||
      !(file instanceof PdfDict) ||
      file.getString("UF", resolve)?.asString() !== RECORD_NAME
    )
      continue;
    file.set("AFRelationship", PdfName.of("Supplement"));
    if (files === undefined) catalog.set("AF", new PdfArray([ref]));
    else files.push(ref);
  }
}

/** A time authority on the network that answers by RFC 3161. It learns one hash and nothing of the document. */
export function timeAuthorityAt(url: string): TimestampAuthority {
  return new HttpTimestampAuthority(url);
}
