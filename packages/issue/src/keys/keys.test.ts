import { describe, expect, test } from "vitest";
import { LITTLE_WORK, PASSPHRASE, testKey } from "../../../../outside/issue/small-document.ts";
import { openKeyFile, readPublicKey, writeKeyFile, writePublicKey } from "./key-file.ts";
import { newRoot } from "./new-key.ts";
import { paperOf, rootFromPaper, rootKey } from "./paper-root.ts";
import { type RegisteredKey, readRegister, writeRegister } from "./register.ts";

const ADDED = "2026-01-01T00:00:00Z";
const entry = (digit: string): RegisteredKey => ({
  key: digit.repeat(64),
  person: "A. Sample",
  device: "phone",
  added: ADDED,
});

describe("a key at rest", () => {
  test("opens with its passphrase alone, and never as another person's", async () => {
    const { text, open, secrets } = await testKey();
    expect(await openKeyFile(text, PASSPHRASE)).toEqual(secrets);
    await expect(openKeyFile(text, `${PASSPHRASE}.`)).rejects.toThrow("does not open");
    await expect(openKeyFile(text.replace("A. Sample", "B. Sample"), PASSPHRASE)).rejects.toThrow("does not open");
    expect(readPublicKey(text)).toEqual(open);
  });

  test("holds no secret that can be read", async () => {
    const { text, secrets } = await testKey();
    for (const secret of [secrets.statement, secrets.document])
      expect(text).not.toContain(Buffer.from(secret).toString("hex"));
  });

  test("is never written twice with the same salt and nonce", async () => {
    const { open, secrets } = await testKey();
    const one = await writeKeyFile(open, secrets, PASSPHRASE, LITTLE_WORK);
    const other = await writeKeyFile(open, secrets, PASSPHRASE, LITTLE_WORK);
    for (const name of ["salt", "nonce", "sealed"]) expect(JSON.parse(one)[name]).not.toBe(JSON.parse(other)[name]);
  });

  test("has a public part without anything secret, which opens nothing", async () => {
    const { text, open } = await testKey();
    const publicPart = writePublicKey(open);
    expect(readPublicKey(publicPart)).toEqual(readPublicKey(text));
    expect(publicPart).not.toMatch(/sealed|salt|nonce/);
    await expect(openKeyFile(publicPart, PASSPHRASE)).rejects.toThrow("the public part of a key alone");
    expect(() => readPublicKey(publicPart.replace(open.key, "no key"))).toThrow("hexadecimal");
  });

  test("that asks for endless work is refused", async () => {
    const { text } = await testKey();
    expect(() => readPublicKey(text.replace('"cost":10', '"cost":40'))).toThrow("cost of the key");
  });
});

describe("a paper root", () => {
  test("comes back from what was typed, however it is spaced", () => {
    const secret = newRoot();
    expect(rootFromPaper(paperOf(secret))).toEqual(secret);
    expect(rootFromPaper(paperOf(secret).toUpperCase().replaceAll(" ", "-"))).toEqual(secret);
  });

  test("finds every slip of one digit, and two groups exchanged", () => {
    const paper = paperOf(Uint8Array.from({ length: 32 }, (_, i) => i));
    for (let i = 0; i < paper.length; i++) {
      if (paper[i] === " ") continue;
      const slip = paper[i] === "0" ? "1" : "0";
      expect(() => rootFromPaper(paper.slice(0, i) + slip + paper.slice(i + 1))).toThrow("does not fit");
    }
    const [first, second, ...rest] = paper.split(" ");
    expect(() => rootFromPaper([second, first, ...rest].join(" "))).toThrow("does not fit");
    expect(() => rootFromPaper(paper.slice(1))).toThrow("71 digits");
  });
});

describe("a register", () => {
  test("only grows, under one root", () => {
    const root = newRoot();
    const first = readRegister(writeRegister([entry("a")], root));
    expect(first).toMatchObject({ number: 1, signed: true, root: rootKey(root) });
    const ended = { ...entry("a"), ended: { as: "lost", since: "2026-05-01T00:00:00Z" } } as const;
    const second = readRegister(writeRegister([ended, entry("b")], root, first));
    expect(second).toMatchObject({ number: 2, signed: true, keys: [ended, entry("b")] });
    expect(() => writeRegister([entry("b")], root, second)).toThrow("only grows");
    expect(() => writeRegister([entry("a"), entry("b")], root, second)).toThrow("only grows");
    expect(() => writeRegister([ended, entry("b")], newRoot(), second)).toThrow("another paper root");
  });

  test("tells that it was changed, and is not added to", () => {
    const root = newRoot();
    const changed = readRegister(writeRegister([entry("a")], root).replace("A. Sample", "B. Sample"));
    expect(changed.signed).toBe(false);
    expect(() => writeRegister([...changed.keys, entry("b")], root, changed)).toThrow("changed since");
  });
});
