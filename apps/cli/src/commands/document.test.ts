import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { PassThrough, Readable } from "node:stream";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { run } from "../run.ts";

const HOUSE = new URL("../../../../examples/terraced-house.json", import.meta.url).pathname;

let folder = "";
const at = (name: string) => join(folder, name);
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "good-grounds-document-"));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

async function document(...words: readonly string[]) {
  const stdout = new PassThrough();
  const stderr = new PassThrough();
  const host = { stdin: Readable.from([]), stdout, stderr, columns: 80, interactive: false };
  const code = await run(["document", ...words], host);
  return { code, out: String(stdout.read() ?? ""), err: String(stderr.read() ?? "") };
}

describe("document writes a paper for one reader", () => {
  test.each(["letter", "works", "notice", "chart", "tenant"])("%s as PDF and as page", async (kind) => {
    expect((await document(kind, HOUSE, "--out", at("a.pdf"))).code).toBe(0);
    expect(readFileSync(at("a.pdf")).subarray(0, 5).toString()).toBe("%PDF-");
    expect((await document(kind, HOUSE, "--out", at("a.html"))).code).toBe(0);
    expect(readFileSync(at("a.html"), "utf8")).toMatch(/^<!DOCTYPE html>\n<html lang="en-GB">/);
  });

  test("the list of works as CSV and workbook", async () => {
    expect((await document("works", HOUSE, "--out", at("a.csv"))).code).toBe(0);
    expect(readFileSync(at("a.csv"), "utf8")).toMatch(/^\u{feff}Report,Premises,No,/u);
    expect((await document("works", HOUSE, "--out", at("A.XLSX"))).code).toBe(0);
    expect(readFileSync(at("A.XLSX")).subarray(0, 2).toString()).toBe("PK");
  });

  test("a page is written anew over an earlier one", async () => {
    await document("letter", HOUSE, "--out", at("a.html"));
    expect((await document("notice", HOUSE, "--out", at("a.html"))).code).toBe(0);
    expect(readFileSync(at("a.html"), "utf8")).toContain("Notice of danger");
  });

  test("a table that somebody may have filled in is not written over", async () => {
    writeFileSync(at("a.csv"), "\u{feff}Report,Premises,No\r\nfilled in\r\n");
    const { code, err } = await document("works", HOUSE, "--out", at("a.csv"));
    expect(code).toBe(2);
    expect(err).toContain("somebody may have written in it");
    expect(readFileSync(at("a.csv"), "utf8")).toContain("filled in");
  });
});

describe("what is wrong is said with what to do", () => {
  test.each([
    [["lettter", HOUSE], 'no document is called "lettter". There are letter, works, notice, chart, tenant.'],
    [[], "name a document. There are letter, works, notice, chart, tenant."],
    [["letter"], "name one inspection file after letter."],
    [["letter", HOUSE], "say where to write it with --out PATH."],
  ] as const)("%j", async (words, message) => {
    const { code, err } = await document(...words);
    expect(code).toBe(2);
    expect(err).toContain(message);
  });

  test("a form that the paper does not have", async () => {
    const { code, err } = await document("letter", HOUSE, "--out", at("a.csv"));
    expect(code).toBe(2);
    expect(err).toContain("Let the name end in .pdf or .html.");
    expect((await document("works", HOUSE, "--out", at("a.doc"))).err).toContain(
      "Let the name end in .pdf or .html or .csv or .xlsx.",
    );
    expect(existsSync(at("a.csv"))).toBe(false);
  });

  test("the inspection file itself is never the target", async () => {
    const copy = at("house.html");
    writeFileSync(copy, readFileSync(HOUSE));
    const { code } = await document("letter", copy, "--out", copy);
    expect(code).toBe(2);
    expect(readFileSync(copy, "utf8")).toBe(readFileSync(HOUSE, "utf8"));
  });
});
