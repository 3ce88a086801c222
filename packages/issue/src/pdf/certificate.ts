import { Integer, Utf8String } from "asn1js";
import { AttributeTypeAndValue, Certificate, TimeType } from "pkijs";

/** Years a self-issued certificate runs: as long as a report may have to be shown. */
const YEARS = 25;
const COMMON_NAME = "2.5.4.3";
const UNIT = "2.5.4.11";

/** A certificate that a person issues to themselves on one device, and its private key as PKCS #8. */
export async function selfIssued(
  person: string,
  device: string,
  from: Date,
): Promise<{ readonly certificate: Uint8Array; readonly secret: Uint8Array }> {
  const { subtle } = globalThis.crypto;
  const pair = await subtle.generateKey({ name: "ECDSA", namedCurve: "P-256" }, true, ["sign", "verify"]);
  const certificate = new Certificate();
  certificate.version = 2;
  const serial = globalThis.crypto.getRandomValues(new Uint8Array(16));
  // Positive, and never a leading zero that another program would leave out.
  serial[0] = ((serial[0] ?? 0) & 0x3f) | 0x40;
  certificate.serialNumber = new Integer({ valueHex: serial.buffer });
  for (const name of [certificate.issuer, certificate.subject]) {
    name.typesAndValues.push(
      new AttributeTypeAndValue({ type: COMMON_NAME, value: new Utf8String({ value: person }) }),
      new AttributeTypeAndValue({ type: UNIT, value: new Utf8String({ value: device }) }),
    );
  }
  const to = new Date(from);
  to.setUTCFullYear(to.getUTCFullYear() + YEARS);
  certificate.notBefore.value = from;
  certificate.notAfter.value = to;
  // Two digits of a year end with 2049.
  if (to.getUTCFullYear() >= 2050) certificate.notAfter.type = TimeType.GeneralizedTime;
  await certificate.subjectPublicKeyInfo.importKey(pair.publicKey);
  await certificate.sign(pair.privateKey, "SHA-256");
  return {
    certificate: new Uint8Array(certificate.toSchema(true).toBER()),
    secret: new Uint8Array(await subtle.exportKey("pkcs8", pair.privateKey)),
  };
}
