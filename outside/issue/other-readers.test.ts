import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { hashOf, type Statement } from "@good-grounds/issue";
import { readIssued, sealPdf, signerOfP12 } from "@good-grounds/issue/pdf";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { needTool } from "../tools.ts";
import { AT, issued, testKey } from "./small-document.ts";

const RELEASE = "0.1.0";
const hasOpenssl = needTool("openssl");
const hasPdfsig = needTool("pdfsig");

let folder = "";
const at = (name: string) => join(folder, name);
let key: Awaited<ReturnType<typeof testKey>>;
let whole: Awaited<ReturnType<typeof issued>>;
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "good-grounds-issue-"));
  key = await testKey();
  whole = await issued(key);
  writeFileSync(at("whole.pdf"), whole.file);
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const openssl = (...args: string[]) => execFileSync("openssl", args, { cwd: folder, encoding: "utf8", stdio: "pipe" });
/** What pdfsig says of a document; it ends with an error where a signature does not fit. */
function pdfsig(name: string): string {
  try {
    return execFileSync("pdfsig", ["-nocert", at(name)], { encoding: "utf8", stdio: "pipe" });
  } catch (error) {
    return Object(error).stdout ?? "";
  }
}

describe.skipIf(!hasPdfsig)("pdfsig", () => {
  test("finds the signature to fit, over the whole document", () => {
    const said = pdfsig("whole.pdf");
    expect(said).toContain("Signature is Valid");
    expect(said).toContain("Total document signed");
    expect(said).toContain("ETSI.CAdES.detached");
  });

  test("tells a changed byte of the pages as we do", async () => {
    const changed = whole.file.slice();
    const place = Buffer.from(whole.file).indexOf("0.35 ohm");
    changed[place] = 0x31;
    writeFileSync(at("changed.pdf"), changed);
    expect(pdfsig("changed.pdf")).not.toContain("Signature is Valid");
    expect((await readIssued(changed, RELEASE)).faults).not.toEqual([]);
  });
});

describe.skipIf(!hasOpenssl)("openssl", () => {
  test("finds the signature of the statement to fit its bytes, and no others", () => {
    const { signature, statement } = JSON.parse(Buffer.from(whole.bytes).toString("utf8"));
    // The bytes put together a second time, by their description in docs/threat-model.md.
    const size = (n: number) => Buffer.from([n >>> 24, n >>> 16, n >>> 8, n].map((byte) => byte & 255));
    const sized = (bytes: Buffer) => Buffer.concat([size(bytes.length), bytes]);
    const lines = statement.map(([name, kind, value]: [string, string, string]) =>
      Buffer.concat([
        sized(Buffer.from(name)),
        sized(Buffer.from(kind)),
        sized(Buffer.from(value, kind === "bytes" ? "hex" : "utf8")),
      ]),
    );
    const message = Buffer.concat([Buffer.from("good-grounds-statement-1\n"), size(lines.length), ...lines]);
    writeFileSync(at("key.der"), Buffer.from(`302a300506032b6570032100${key.open.key}`, "hex"));
    writeFileSync(at("signature"), Buffer.from(signature, "hex"));
    const verify = (bytes: Buffer) => {
      writeFileSync(at("message"), bytes);
      return openssl(
        "pkeyutl",
        "-verify",
        "-pubin",
        "-keyform",
        "DER",
        "-inkey",
        "key.der",
        "-rawin",
        "-in",
        "message",
        "-sigfile",
        "signature",
      );
    };
    expect(verify(message)).toContain("Success");
    expect(() => verify(Buffer.concat([message, Buffer.from([0])]))).toThrow();
    expect(hashOf(new Uint8Array(message))).toBe(whole.record.hash);
  });

  test("a certificate of somebody else, from a PKCS #12 file, signs as well", async () => {
    openssl(
      "req",
      "-x509",
      "-newkey",
      "rsa:2048",
      "-nodes",
      "-keyout",
      "k.pem",
      "-out",
      "c.pem",
      "-days",
      "9000",
      "-subj",
      "/CN=A. Sample",
    );
    openssl("pkcs12", "-export", "-inkey", "k.pem", "-in", "c.pem", "-out", "k.p12", "-passout", "pass:secret");
    const signer = await signerOfP12(new Uint8Array(readFileSync(at("k.p12"))), "secret");
    const { file } = await issued({ ...key, signer });
    expect((await readIssued(file, RELEASE)).faults).toEqual([]);
    const changed = file.slice();
    const place = whole.pages.length + 30;
    changed[place] = (changed[place] ?? 0) ^ 1;
    expect((await readIssued(changed, RELEASE)).faults).not.toEqual([]);
  });
});

describe.skipIf(!hasOpenssl)("a time authority", () => {
  test("that openssl plays is read, and its answer to another signature is told", async () => {
    writeFileSync(at("ts.cnf"), CONFIG);
    writeFileSync(at("serial"), "01");
    openssl(
      "req",
      "-x509",
      "-newkey",
      "rsa:2048",
      "-nodes",
      "-keyout",
      "ts.key",
      "-out",
      "ts.pem",
      "-days",
      "9000",
      "-subj",
      "/CN=Office clock",
      "-addext",
      "extendedKeyUsage=critical,timeStamping",
    );
    const timestamp = async (digest: Uint8Array) => {
      openssl("ts", "-query", "-digest", Buffer.from(digest).toString("hex"), "-sha256", "-cert", "-out", "q.tsq");
      openssl(
        "ts",
        "-reply",
        "-config",
        "ts.cnf",
        "-section",
        "clock",
        "-queryfile",
        "q.tsq",
        "-token_out",
        "-out",
        "t.der",
      );
      return new Uint8Array(readFileSync(at("t.der")));
    };
    const more: Partial<Statement> = { timeAuthority: true };
    const { pages, bytes } = await issued(key, more);
    const file = await sealPdf(pages, bytes, new Date(AT), key.signer, { timestamp });
    const read = await readIssued(file, RELEASE);
    expect(read.faults).toEqual([]);
    expect(read.time).toMatchObject({ by: "Office clock", fits: true });
    const foreign = await timestamp(Buffer.alloc(32, 7));
    const other = await sealPdf(pages, bytes, new Date(AT), key.signer, { timestamp: async () => foreign });
    expect((await readIssued(other, RELEASE)).faults.join()).toContain("time authority");
  });
});

const CONFIG = `
[clock]
serial = serial
crypto_device = builtin
signer_cert = ts.pem
certs = ts.pem
signer_key = ts.key
signer_digest = sha256
default_policy = 1.2.3.4
digests = sha256
ess_cert_id_alg = sha256
`;
