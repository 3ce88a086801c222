import { bytesToHex } from "@noble/hashes/utils.js";
import { fromBER, OctetString } from "asn1js";
import { Certificate, ContentInfo, CryptoEngine, SignedData, TSTInfo } from "pkijs";
import { hashOf } from "../statement/statement.ts";

const COMMON_NAME = "2.5.4.3";

/** What a time authority said of a signature. */
export interface TimeWord {
  readonly at: Date;
  /** As its certificate calls it. Who issued that certificate is not looked at. */
  readonly by: string;
  /** Whether it speaks of this signature, and its own signature fits the certificate it carries. */
  readonly fits: boolean;
}

/** Reads the answer of a time authority (RFC 3161) to a signature value. Undefined where it cannot be read. */
export async function timeWord(token: Uint8Array, signature: Uint8Array): Promise<TimeWord | undefined> {
  try {
    const { result } = fromBER(new Uint8Array(token).buffer);
    const data = new SignedData({ schema: new ContentInfo({ schema: result }).content });
    const content = data.encapContentInfo.eContent;
    if (content === undefined) return undefined;
    const inner = content.valueBlock.value.filter((part) => part instanceof OctetString);
    const bytes = inner.length === 0 ? [content] : inner;
    const info = TSTInfo.fromBER(new Uint8Array(bytes.flatMap((part) => [...part.valueBlock.valueHexView])));
    const speaksOf = bytesToHex(new Uint8Array(info.messageImprint.hashedMessage.valueBlock.valueHexView));
    const whole = new Uint8Array(signature).buffer;
    // The engine that others set for this library knows no hash by itself.
    const plain = new CryptoEngine({ name: "plain", crypto: globalThis.crypto });
    const isSigned = await data.verify({ signer: 0, checkChain: false, data: whole }, plain).catch(() => false);
    const [certificate] = (data.certificates ?? []).filter((one) => one instanceof Certificate);
    const name = certificate?.subject.typesAndValues.find(({ type }) => type === COMMON_NAME)?.value.valueBlock.value;
    return {
      at: info.genTime,
      by: String(name ?? "no name"),
      fits: isSigned === true && speaksOf === hashOf(signature),
    };
  } catch {
    return undefined;
  }
}
