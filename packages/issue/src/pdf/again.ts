import type { Signer } from "@libpdf/core";
import { fromBER } from "asn1js";
import {
  Certificate,
  createCMSECDSASignature,
  createECDSASignatureFromCMS,
  ECNamedCurves,
  getAlgorithmParameters,
} from "pkijs";
import { sealPdf } from "./seal.ts";
import type { SignatureIn } from "./signature-in.ts";

/** A document put together again from its parts, and whether the signature in it is that of its certificate. */
export interface Again {
  readonly bytes: Uint8Array;
  readonly signed: boolean;
}

const RSA = "1.2.840.113549.1.1.1";

/**
 * Adds record and signature to the pages once more, with the signature value as found in place of a private key. What
 * comes out differs from the document that was issued in no byte, so any that does was changed.
 */
export async function sealedAgain(pages: Uint8Array, record: Uint8Array, at: Date, found: SignatureIn): Promise<Again> {
  let signed = false;
  const certificate = certificateOf(found.certificate);
  const isRsa = certificate.subjectPublicKeyInfo.algorithm.algorithmId === RSA;
  const signer: Signer = {
    certificate: found.certificate,
    certificateChain: [...found.chain],
    keyType: isRsa ? "RSA" : "EC",
    signatureAlgorithm: isRsa ? "RSASSA-PKCS1-v1_5" : "ECDSA",
    async sign(data) {
      signed = await isSignatureOf(certificate, isRsa, found.value, data);
      return found.value;
    },
  };
  const { token } = found;
  const authority = token === undefined ? undefined : { timestamp: async () => token };
  const bytes = await sealPdf(pages, record, at, signer, authority);
  return { bytes, signed };
}

function certificateOf(der: Uint8Array): Certificate {
  return new Certificate({ schema: fromBER(new Uint8Array(der).buffer).result });
}

async function isSignatureOf(
  certificate: Certificate,
  isRsa: boolean,
  value: Uint8Array,
  data: Uint8Array,
): Promise<boolean> {
  const { subtle } = globalThis.crypto;
  const name = isRsa ? "RSASSA-PKCS1-v1_5" : "ECDSA";
  const bytes = new Uint8Array(data);
  try {
    const { algorithm } = getAlgorithmParameters(name, "importKey");
    const curve = ECNamedCurves.namedCurves[Object(certificate.subjectPublicKeyInfo.parsedKey).namedCurve] ?? undefined;
    const kind = isRsa
      ? { ...algorithm, hash: { name: "SHA-256" } }
      : { ...algorithm, namedCurve: curve?.name ?? "P-256" };
    const key = await certificate.getPublicKey({ algorithm: { algorithm: kind, usages: ["verify"] } });
    const signature = isRsa ? new Uint8Array(value).buffer : pairIn(value, curve?.size ?? 32);
    if (signature === undefined) return false;
    return await subtle.verify({ name, hash: "SHA-256" }, key, signature, bytes);
  } catch {
    return false;
  }
}

/**
 * The two numbers of an ECDSA signature; undefined where they are not in the one spelling that DER has for them. Another
 * spelling of the same numbers was never written by whoever signed.
 */
function pairIn(value: Uint8Array, size: number): ArrayBuffer | undefined {
  const pair = createECDSASignatureFromCMS(fromBER(new Uint8Array(value).buffer).result, size);
  const spelt = new Uint8Array(createCMSECDSASignature(pair));
  return spelt.length === value.length && spelt.every((byte, i) => byte === value[i]) ? pair : undefined;
}
