import { fromBER, OctetString } from "asn1js";
import { Certificate, ContentInfo, SignedData } from "pkijs";

/** What stands in the hole that a signature on a document leaves for itself. */
export interface SignatureIn {
  readonly certificate: Uint8Array;
  readonly chain: readonly Uint8Array[];
  /** The signature value as the certificate's key gave it. */
  readonly value: Uint8Array;
  /** The answer of a time authority, where there is one. */
  readonly token: Uint8Array | undefined;
}

const TIME_TOKEN = "1.2.840.113549.1.9.16.2.14";

/** The signature in what was added to a document after `from`; undefined where there is none that can be read. */
export function signatureIn(file: Uint8Array, from: number): SignatureIn | undefined {
  const added = new TextDecoder("latin1").decode(file.subarray(from));
  const hole = /\/Contents\s*<([0-9A-Fa-f]+)>/.exec(added)?.[1];
  if (hole === undefined) return undefined;
  try {
    return parts(Uint8Array.from(hole.match(/../g) ?? [], (digits) => Number.parseInt(digits, 16)));
  } catch {
    return undefined;
  }
}

function parts(bytes: Uint8Array<ArrayBuffer>): SignatureIn | undefined {
  const read = fromBER(bytes.buffer);
  if (read.offset < 0) return undefined;
  const data = new SignedData({ schema: new ContentInfo({ schema: read.result }).content });
  const certificates = (data.certificates ?? []).filter((one) => one instanceof Certificate).map(derOf);
  const [signer, more] = data.signerInfos;
  const [certificate, ...chain] = certificates;
  if (signer === undefined || more !== undefined || certificate === undefined) return undefined;
  if (!(signer.signature instanceof OctetString)) return undefined;
  const token = signer.unsignedAttrs?.attributes.find(({ type }) => type === TIME_TOKEN)?.values[0];
  return {
    certificate,
    chain,
    value: new Uint8Array(signer.signature.valueBlock.valueHexView),
    token: token === undefined ? undefined : new Uint8Array(token.toBER()),
  };
}

function derOf(certificate: Certificate): Uint8Array {
  return new Uint8Array(certificate.toSchema().toBER());
}
