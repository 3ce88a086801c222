import {
  hashOf,
  type IssueRecord,
  openKeyFile,
  readPublicKey,
  readRecord,
  type Statement,
  writeRecord,
} from "@good-grounds/issue";
import { certificateHash, newKey, sealPdf, signerOf } from "@good-grounds/issue/pdf";

/** The least work of scrypt that is taken: tests open many keys. */
export const LITTLE_WORK = 10;
export const PASSPHRASE = "four words that differ";
export const AT = "2026-10-08T10:00:00Z";

/** A document of one page with an inspection file attached, written by hand: it is small, so that every byte can be tried. */
function smallDocument(evidence: string): Uint8Array {
  const size = Buffer.byteLength(evidence);
  const objects = [
    "<< /Type /Catalog /Pages 2 0 R /AF [5 0 R] /Names << /EmbeddedFiles << /Names [(inspection.json) 5 0 R] >> >> >>",
    "<< /Type /Pages /Kids [3 0 R] /Count 1 >>",
    "<< /Type /Page /Parent 2 0 R /MediaBox [0 0 200 100] /Resources << >> /Contents 4 0 R >>",
    "<< /Length 15 >>\nstream\n0 0 20 20 re f \nendstream",
    "<< /Type /Filespec /AFRelationship /Source /F (inspection.json) /UF (inspection.json) /EF << /F 6 0 R >> >>",
    `<< /Type /EmbeddedFile /Length ${size} >>\nstream\n${evidence}\nendstream`,
  ];
  let text = "%PDF-1.7\n";
  const places = objects.map((object, i) => {
    const at = Buffer.byteLength(text);
    text += `${i + 1} 0 obj\n${object}\nendobj\n`;
    return `${String(at).padStart(10, "0")} 00000 n \n`;
  });
  const table = Buffer.byteLength(text);
  const count = objects.length + 1;
  text += `xref\n0 ${count}\n0000000000 65535 f \n${places.join("")}`;
  text += `trailer\n<< /Size ${count} /Root 1 0 R /ID [<00112233> <00112233>] >>\nstartxref\n${table}\n%%EOF\n`;
  return new Uint8Array(Buffer.from(text));
}

/** A key for tests, opened. */
export async function testKey(person = "A. Sample", made = "2026-01-01T00:00:00Z") {
  const text = await newKey({ person, device: "phone", made }, PASSPHRASE, LITTLE_WORK);
  const open = readPublicKey(text);
  const secrets = await openKeyFile(text, PASSPHRASE);
  const signer = await signerOf(Buffer.from(open.certificate, "hex"), secrets.document);
  return { text, open, secrets, signer };
}

/** A small document, issued. */
export async function issued(
  key: Awaited<ReturnType<typeof testKey>>,
  more: Partial<Statement> = {},
  evidence = '{"reading":"0.35 ohm"}',
  register?: string,
): Promise<{
  readonly file: Uint8Array;
  readonly pages: Uint8Array;
  readonly bytes: Uint8Array;
  readonly record: IssueRecord;
}> {
  const pages = smallDocument(evidence);
  const statement: Statement = {
    report: "GG-1",
    number: 1,
    evidence: hashOf(evidence),
    pages: hashOf(pages),
    pagesLength: pages.length,
    photographs: [hashOf("a photograph")],
    earlier: [],
    release: "0.1.0",
    layout: "command",
    outcome: "unsatisfactory",
    signatures: [{ words: "A. Sample; inspected-and-tested; 2026-10-08T09:00:00Z", drawn: hashOf("M0 0L10 10") }],
    reasons: [{ point: "not-tested /boards/0", words: "The tenant works from home." }],
    at: AT,
    clock: "the device that issued it",
    timeAuthority: false,
    key: key.open.key,
    certificate: certificateHash(key.signer),
    ...more,
  };
  const bytes = writeRecord(statement, key.secrets.statement, register);
  const file = await sealPdf(pages, bytes, new Date(statement.at), key.signer);
  return { file, pages, bytes, record: readRecord(bytes) };
}
