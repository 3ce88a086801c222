import { bytesToHex } from "@noble/hashes/utils.js";
import { fromBER, OctetString } from "asn1js";
import { ContentInfo, SignedData, TSTInfo } from "pkijs";
import { hashOf } from "../statement/statement.ts";

/** What a time authority said of a signature. */
export interface TimeWord {
  readonly at: Date;
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
    const isSigned = await data.verify({ signer: 0, checkChain: false }).catch(() => false);
    return { at: info.genTime, fits: isSigned === true && speaksOf === hashOf(signature) };
  } catch {
    return undefined;
  }
}
