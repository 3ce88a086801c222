import { beforeAll, describe, expect, test } from "vitest";
import { issued, testKey } from "../../../../outside/issue/small-document.ts";
import { newRoot } from "../keys/new-key.ts";
import { type Ending, type RegisteredKey, readRegister, writeRegister } from "../keys/register.ts";
import { type Issued, readIssued } from "../pdf/issued.ts";
import { sealPdf } from "../pdf/seal.ts";
import { hashOf } from "../statement/statement.ts";
import { type Answer, answers, type Known, NOT_SHOWN } from "./answers.ts";

const RELEASE = "0.1.0";
let key: Awaited<ReturnType<typeof testKey>>;
let whole: Awaited<ReturnType<typeof issued>>;
let read: Issued;
beforeAll(async () => {
  key = await testKey();
  whole = await issued(key);
  read = await readIssued(whole.file, RELEASE);
});

const NOT = { not: "not asked." };
const answer = (question: Answer["question"], of: Issued, known: Partial<Known> = {}) => {
  const found = answers(of, { issues: [], madeAgain: NOT, ...known }).find((one) => one.question === question);
  return { standing: found?.standing, words: found?.words.join(" ") ?? "" };
};
const root = newRoot();
function register(ended?: { as: Ending; since: string }, added = "2026-01-01T00:00:00Z") {
  const entry: RegisteredKey = { key: key.open.key, person: "A. Sample", device: "phone", added };
  return readRegister(writeRegister([ended === undefined ? entry : { ...entry, ended }], root));
}

describe("by whom", () => {
  test("without a register nobody is named", () => {
    expect(answer("who", read)).toMatchObject({ standing: "open", words: expect.not.stringContaining("A. Sample") });
  });

  test("a register that came with the document names, and says whose word that is", async () => {
    const { file } = await issued(key, {}, undefined, register().text);
    const carried = await readIssued(file, RELEASE);
    expect(answer("who", carried)).toMatchObject({
      standing: "open",
      words: expect.stringContaining("anybody may have written both"),
    });
    expect(answer("who", carried, { root: register().root }).standing).toBe("holds");
    expect(answer("who", carried, { root: "0".repeat(64) }).standing).toBe("against");
  });

  test("a key that is not in the register is told", async () => {
    const other = await readIssued((await issued(await testKey())).file, RELEASE);
    expect(answer("who", other, { register: register() })).toMatchObject({ standing: "against" });
  });

  test.each([
    ["retired", "2026-11-01T00:00:00Z", "holds"],
    ["lost", "2026-11-01T00:00:00Z", "holds"],
    ["stolen", "2026-11-01T00:00:00Z", "open"],
    ["retired", "2026-10-01T00:00:00Z", "against"],
    ["lost", "2026-10-01T00:00:00Z", "against"],
    ["stolen", "2026-10-01T00:00:00Z", "against"],
  ] as const)("a key that was %s since %s: %s", (as, since, standing) => {
    expect(answer("who", read, { register: register({ as, since }) }).standing).toBe(standing);
  });

  test("a stolen key stays open also where a time authority saw the signature before: a thief may call anything one", () => {
    const stolen = register({ as: "stolen", since: "2026-11-01T00:00:00Z" });
    const seen = { ...read, time: { at: new Date("2026-10-08T10:00:01Z"), by: "Office clock", fits: true } };
    expect(answer("who", seen, { register: stolen })).toMatchObject({
      standing: "open",
      words: expect.stringContaining("Office clock"),
    });
  });

  test("a statement from before its key was added is told", () => {
    expect(answer("who", read, { register: register(undefined, "2026-12-01T00:00:00Z") }).standing).toBe("against");
  });
});

describe("whether it is the latest", () => {
  test("alone that is not known", () => {
    expect(answer("latest", read, { issues: [whole.record] }).standing).toBe("open");
  });

  test("an older issue handed in again is told, beside the one that replaces it", async () => {
    const second = await issued(key, { number: 2, replaces: whole.record.hash, at: "2026-10-09T10:00:00Z" });
    const issues = [whole.record, second.record];
    expect(answer("latest", read, { issues })).toMatchObject({
      standing: "against",
      words: expect.stringContaining("replaced by issue 2"),
    });
    const later = await readIssued(second.file, RELEASE);
    expect(answer("latest", later, { issues })).toMatchObject({
      standing: "holds",
      words: expect.stringContaining("the latest of the 2"),
    });
  });

  test("two issues of one number are told", async () => {
    const twin = await issued(key, { at: "2026-10-09T10:00:00Z" });
    expect(answer("latest", read, { issues: [whole.record, twin.record] }).standing).toBe("against");
  });
});

test("what another release wrote around the pages is not compared; what was added after it is told all the same", async () => {
  const { file } = await issued(key, { release: "9.9.9" });
  const written = Buffer.from(file);
  // As a release would that leaves no blank there.
  const at = written.indexOf("/Type /Sig\n");
  written.write("/Type\n/Sig\n", at);
  const found = await readIssued(new Uint8Array(written), RELEASE);
  expect(answer("as-signed", found)).toMatchObject({
    standing: "open",
    words: expect.stringContaining("release 9.9.9"),
  });
  const longer = await readIssued(new Uint8Array(Buffer.concat([file, Buffer.from("\n")])), RELEASE);
  expect(answer("as-signed", longer)).toMatchObject({
    standing: "against",
    words: expect.stringContaining("last byte"),
  });
});

describe("evidence, pages and photographs", () => {
  test("pages made again are compared to the byte", () => {
    expect(answer("pages", read, { madeAgain: whole.pages }).standing).toBe("holds");
    const other = whole.pages.slice();
    other[20] = (other[20] ?? 0) ^ 1;
    expect(answer("pages", read, { madeAgain: other }).standing).toBe("against");
    expect(answer("pages", read)).toMatchObject({ standing: "open", words: "Not compared: not asked." });
  });

  test("another photograph is told, and those that are the same are counted", () => {
    const same = { name: "a.jpg", hash: hashOf("a photograph") };
    expect(answer("as-signed", read, { photographs: [same] })).toMatchObject({
      standing: "holds",
      words: expect.stringContaining("the same: 1"),
    });
    const other = { name: "b.jpg", hash: hashOf("another photograph") };
    expect(answer("as-signed", read, { photographs: [same, other] })).toMatchObject({
      standing: "against",
      words: expect.stringContaining("b.jpg"),
    });
  });

  test("where the statement itself does not stand, nothing is said of who, when, latest and pages", async () => {
    const said = Buffer.from(whole.bytes).toString("utf8").replace("unsatisfactory", "satisfactory");
    const record = new Uint8Array(Buffer.from(said));
    const changed = await sealPdf(whole.pages, record, new Date(whole.record.statement.at), key.signer);
    const five = answers(await readIssued(changed, RELEASE), { issues: [], madeAgain: whole.pages });
    expect(five.map(({ standing }) => standing)).toEqual(["against", "open", "open", "open", "open"]);
  });
});

test("no answer uses words that promise more than was looked at", async () => {
  const known: readonly Partial<Known>[] = [
    {},
    { register: register() },
    { madeAgain: whole.pages, issues: [whole.record] },
  ];
  const words = known
    .flatMap((one) => answers(read, { issues: [], madeAgain: NOT, ...one }))
    .flatMap((one) => one.words);
  expect([...words, ...NOT_SHOWN].join(" ")).not.toMatch(/\b(in)?valid|\btrusted|\bgenuine|\bauthentic/i);
});
