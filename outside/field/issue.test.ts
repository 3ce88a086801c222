/// <reference lib="dom" />
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { readPublicKey, readRegister, rootKey, writeRegister } from "@good-grounds/issue";
import { newRoot, readIssued } from "@good-grounds/issue/pdf";
import type { BrowserContext, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { needTool } from "../tools.ts";
import { type AppInBrowser, appInBrowser, faults } from "./app-in-browser.ts";
import { smallTargets } from "./targets.ts";

const PASSPHRASE = "four words that differ";
const DESK = { viewport: { width: 1280, height: 800 } };

describe.runIf(needTool("chromium"))("issuing a report on the device", () => {
  let app: AppInBrowser;
  let context: BrowserContext;
  let page: Page;
  let work = "";
  const root = newRoot();
  beforeAll(async () => {
    app = await appInBrowser("issue");
    work = mkdtempSync(join(tmpdir(), "issue-"));
    context = await app.fresh(DESK);
  });
  afterAll(async () => {
    await app?.close();
    rmSync(work, { recursive: true, force: true });
  });

  const at = (name: string) => join(work, name);
  const press = (name: string) => page.getByRole("button", { name, exact: true }).click();
  const saved = async (name: string): Promise<string> => {
    const [download] = await Promise.all([page.waitForEvent("download"), press(name)]);
    const path = at(download.suggestedFilename());
    await download.saveAs(path);
    return path;
  };
  const choose = async (words: string, ...files: readonly string[]) => {
    const [chooser] = await Promise.all([page.waitForEvent("filechooser"), page.getByText(words).first().click()]);
    await chooser.setFiles([...files]);
  };
  const looksWell = async () =>
    expect({ faults: await faults(page), small: await page.evaluate(smallTargets) }).toEqual({ faults: [], small: [] });

  test("a key is made, kept encrypted, and its public part stands in a register", async () => {
    page = await app.at(context, "settings");
    await page.getByText("No key is on this device").waitFor();
    await page.getByLabel("Whose key").fill("A. Sample");
    await page.getByLabel("What this device is called").fill("tablet");
    await page.getByLabel("A new passphrase", { exact: true }).fill("short");
    await page.getByLabel("The passphrase again").fill("shorter");
    await page.getByText("The two differ").waitFor();
    expect(await page.getByRole("button", { name: "Make the key" }).isDisabled()).toBe(true);
    await looksWell();
    await page.getByLabel("A new passphrase", { exact: true }).fill(PASSPHRASE);
    await page.getByLabel("The passphrase again").fill(PASSPHRASE);
    await press("Make the key");
    await page.getByText("The key is on this device now").waitFor();
    await looksWell();
    const text = readFileSync(await saved("Save its public part"), "utf8");
    expect(text).not.toContain("sealed");
    const whole = readFileSync(await saved("Save the key, encrypted"), "utf8");
    expect(readPublicKey(whole)).toEqual(readPublicKey(text));
    expect(whole).not.toContain(PASSPHRASE);

    const open = readPublicKey(text);
    expect(open).toMatchObject({ person: "A. Sample", device: "tablet" });
    const entry = { key: open.key, person: open.person, device: open.device, added: "2020-01-01T00:00:00Z" };
    const register = writeRegister([entry], root);
    writeFileSync(at("register.json"), register);
    writeFileSync(at("changed.json"), register.replace("tablet", "laptop"));
    await choose("Choose a register", at("changed.json"));
    await page.getByText("changed since its root signed it").waitFor();
    await choose("Choose a register", at("register.json"));
    await page.getByText("Register 1, with 1 key").waitFor();
    expect(await page.getByText("changed since its root signed it").count()).toBe(0);
  });

  test("an issue asks a reason for what stands open and the right passphrase; the next one replaces it", async () => {
    await app.at(context, "job", "demonstration", "hand-over");
    await press("Begin an issue");
    await page.getByText("Why it is issued all the same").first().waitFor();
    const reasons = page.getByLabel("Why it is issued all the same");
    await page.getByLabel("Passphrase of the key").fill("four words that do not");
    expect(await page.getByRole("button", { name: "Sign and issue" }).isDisabled()).toBe(true);
    for (const reason of await reasons.all())
      await reason.fill("The cupboard was locked on the day; the tenant has the key and will ring.");
    await looksWell();
    await press("Sign and issue");
    await page.getByText("The key does not open").waitFor();
    await page.getByLabel("Passphrase of the key").fill(PASSPHRASE);
    await press("Sign and issue");
    await page.getByText("Issue 1 is made, was read back as signed, and is kept on this device.").waitFor();
    const one = await saved("Save the issued PDF");
    await saved("Save its record");
    const read = await readIssued(new Uint8Array(readFileSync(one)), "0.1.0");
    expect(read).toMatchObject({ faults: [], record: { signed: true } });
    expect(read.record?.statement).toMatchObject({ number: 1, layout: "device" });
    expect(read.record?.statement.reasons[0]?.words).toContain("the tenant has the key");
    expect(readRegister(read.record?.register?.text ?? "").root).toBe(rootKey(root));
    await looksWell();

    await page.reload();
    await page.getByText(/^Issue 1 of /).waitFor();
    await press("Begin an issue");
    await reasons.first().waitFor();
    for (const reason of await reasons.all()) await reason.fill("The tenant has the key and was asked twice.");
    await page.getByLabel("Passphrase of the key").fill(PASSPHRASE);
    await press("Sign and issue");
    await page.getByText("Issue 2 is made").waitFor();
    const two = await readIssued(new Uint8Array(readFileSync(await saved("Save the issued PDF"))), "0.1.0");
    expect(two.record?.statement).toMatchObject({ number: 2, replaces: read.record?.hash });
    await page.getByText("replaced by issue 2").waitFor();
  });

  test("without a network, five answers are given on what was issued, and against what was changed", async () => {
    await app.stopServer();
    const [one = "", two = ""] = [1, 2].map((number) => at(`GG-2026-0417-issue-${number}.pdf`));
    await app.at(context, "check");
    await choose("Choose files", two);
    await page.getByText("Five answers").waitFor();
    await page.getByText("came out the same to the last byte").waitFor();
    await page.getByText("no byte of the document differs").waitFor();
    await page.getByText(/anybody may have written both/).waitFor();
    await looksWell();
    await page.getByLabel("Public root of the firm").fill(rootKey(root));
    await page.getByText("By the register or root that was handed in.").waitFor();
    await page.getByLabel("Public root of the firm").fill("0".repeat(64));
    await page.getByText(/not under the one given/).waitFor();

    await choose("Choose files", one, two);
    await page.getByText(/replaced by issue 2 of/).waitFor();
    const bytes = readFileSync(two);
    bytes[5000] = (bytes[5000] ?? 0) ^ 1;
    writeFileSync(at("changed.pdf"), bytes);
    await choose("Choose files", at("changed.pdf"));
    await page.getByText("The pages were changed").waitFor();
    writeFileSync(at("nothing.pdf"), "%PDF-1.7\nnothing");
    await choose("Choose files", at("nothing.pdf"));
    await page.getByText("cannot be read").waitFor();
    await app.startServer();
  });
});
