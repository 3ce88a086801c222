/// <reference lib="dom" />
import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { unzipSync } from "fflate";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { needTool } from "../tools.ts";
import { type AppInBrowser, appInBrowser, kept, newJob } from "./app-in-browser.ts";
import { hasExif, withPlace } from "./photograph.ts";

const CLI = fileURLToPath(new URL("../../apps/cli/src/main.ts", import.meta.url));

describe.runIf(needTool("chromium"))("the whole job on a phone without a signal", () => {
  let app: AppInBrowser;
  beforeAll(async () => {
    app = await appInBrowser("whole-job");
  });
  afterAll(() => app?.close());

  /** Answers a question of few words, however it is asked. */
  const choose = async (page: Page, label: string, answer: string) => {
    const group = page.getByRole("group", { name: label, exact: true });
    if ((await group.count()) > 0) await group.getByRole("radio", { name: answer, exact: true }).check();
    else await page.getByLabel(label, { exact: true }).selectOption({ label: answer });
  };
  const fill = async (page: Page, label: string, text: string) => {
    const field = page.getByLabel(label, { exact: true }).and(page.locator("input, textarea"));
    await field.fill(text);
    await field.blur();
  };
  const next = async (page: Page, name: string) => {
    await kept(page);
    await page.getByRole("link", { name: `Next: ${name}` }).tap();
    await page.getByRole("heading", { level: 1, name }).waitFor();
    await page.locator("[aria-busy]").waitFor({ state: "detached" });
  };
  const press = async (page: Page, keys: string) => {
    const keypad = page.getByRole("region", { name: "Keypad" });
    for (const key of keys) await keypad.getByRole("button", { name: key === "." ? "Point" : key, exact: true }).tap();
    await keypad.getByRole("button", { name: /^Next/ }).tap();
  };
  const saved = async (page: Page, button: string): Promise<string> => {
    const download = page.waitForEvent("download");
    await page.getByRole("button", { name: button }).tap();
    return (await download).path();
  };

  test("goes from nothing to an inspection file that the command line weighs and reports", async () => {
    const context = await app.fresh();
    const first = await app.at(context, "job", "demonstration");
    await first.waitForFunction(() => navigator.serviceWorker.controller !== null);
    await app.stopServer();
    const page = await newJob(app, context);
    const job = new URL(page.url()).hash.split("/")[2] as string;

    await fill(page, "Name of the client", "A. Example");
    await fill(page, "Address of the premises", "1 Example Road\nAnytown");
    await choose(page, "Use", "Dwelling");
    await choose(page, "Tenure", "Let privately");
    await choose(page, "Nation", "England");
    await fill(page, "Why the inspection is wanted", "before letting");
    await next(page, "People and instruments");
    await page.getByRole("button", { name: "Add a person" }).tap();
    await fill(page, "Name", "C. Inspector");
    await fill(page, "Position", "inspector");
    await page.getByRole("radio", { name: "C. Inspector" }).check();
    await page.getByRole("button", { name: "Add an instrument" }).tap();
    await fill(page, "What it is", "multifunction installation tester");
    await fill(page, "Serial number", "SN-0001");
    await next(page, "Extent and limitations");
    await fill(page, "What is inspected", "All circuits.");
    await fill(page, "Agreed with", "A. Example");

    await app.at(context, "job", job, "supply");
    await choose(page, "System earthing", "TN-C-S");
    await choose(page, "Phases", "one");

    await app.at(context, "job", job, "installation");
    await page.getByRole("button", { name: "Add a board" }).tap();
    await fill(page, "Name", "Board 1");
    for (const [number, circuit] of [
      ["1", { description: "Lights", load: "lighting" }],
      ["2", { description: "Cooker", load: "cooker" }],
    ] as const) {
      await app.at(context, "job", job, "installation");
      await page
        .getByRole("button", { name: /Add a circuit.*Board 1/ })
        .first()
        .tap();
      await page.getByRole("heading", { level: 2, name: new RegExp(number) }).waitFor();
      await fill(page, "What it supplies", circuit.description);
      await choose(page, "Shape", "radial");
      await choose(page, "Main load", circuit.load);
      await kept(page);
    }

    await app.at(context, "job", job, "readings");
    await page.getByRole("link", { name: /Lights/ }).tap();
    await page.getByLabel(/^R1\+R2/).tap();
    await press(page, "0.42");
    await kept(page);

    await app.at(context, "job", job, "observations");
    await page.getByRole("button", { name: "Add an observation" }).tap();
    const jpeg = withPlace(await pictureOf(page));
    expect(hasExif(jpeg)).toBe(true);
    await page.locator("input[capture]").setInputFiles({ name: "board.jpg", mimeType: "image/jpeg", buffer: jpeg });
    await page.getByLabel("What it shows").waitFor();
    await fill(page, "Where", "Board 1, top row");
    await fill(page, "What was seen", "A blanking piece is missing; live parts can be touched.");
    await page.getByLabel("Subject").fill("blank");
    await page.getByRole("listitem").getByRole("button", { name: /blank/i }).first().tap();
    // One question after the other, until what follows stands there.
    for (let asked = 0; asked < 12; asked++) {
      await page.getByText(/^(Still possible|Follows from the facts)$/).waitFor();
      const question = page.getByRole("group", { name: "Next question" });
      if ((await question.count()) === 0) break;
      const before = await question.textContent();
      await question.locator(".answer").last().tap();
      await page.waitForFunction((text) => document.querySelector("fieldset.question")?.textContent !== text, before);
    }
    await page.getByText("Follows from the facts", { exact: true }).waitFor();
    await page.getByRole("radio", { name: /C1/ }).check();
    await page.getByLabel("Your reason").fill("Live parts within reach in a dwelling.");
    await fill(page, "What was done to make it safe", "Blank fitted, circuit isolated.");
    await fill(page, "Who was told", "A. Example, in person");
    await page.getByRole("button", { name: "Now", exact: true }).tap();
    await kept(page);

    await app.at(context, "job", job, "finish");
    await page.getByText("Looking for what stands in the way").waitFor({ state: "detached" });
    await page.getByRole("radio", { name: "unsatisfactory" }).check();
    await fill(page, "General condition", "Sound apart from the opening at the board.");
    await page.getByText("Looking for what stands in the way").waitFor({ state: "detached" });
    // Of these there may be none, and only a person can say so.
    for (const what of [/records/, /samples/, /limitations/, /bonding/, /inspected/]) {
      const none = page.getByRole("button", { name: /^There is none/ }).filter({ hasText: what });
      await none.tap();
      await none.waitFor({ state: "detached" });
    }
    await page.getByText("Nothing stands in the way of the report.").waitFor();
    await page.getByLabel("Who signs").selectOption({ label: "C. Inspector" });
    await page.getByRole("button", { name: "Sign now" }).tap();
    await page.getByText(/; signed for what stands here now/).waitFor();
    await kept(page);

    await app.at(context, "job", job, "hand-over");
    const file = await saved(page, "Save the inspection file");
    const copy = unzipSync(readFileSync(await saved(page, "Save a copy")));
    const photographs = Object.keys(copy).filter((name) => name.startsWith("photographs/"));
    expect(photographs).toHaveLength(1);
    expect(hasExif(copy[photographs[0] as string] as Uint8Array)).toBe(false);

    const inspection = JSON.parse(readFileSync(file, "utf8"));
    expect(inspection.boards[0].circuits).toHaveLength(2);
    expect(inspection.boards[0].circuits[0].readings.r1r2.shown).toBe("0.42 Ω");
    expect(inspection.observations[0].choice.classification).toBe("C1");
    expect(`photographs/${inspection.photographs[0].sha256}.jpg`).toBe(photographs[0]);
    const run = (...args: readonly string[]) => execFileSync(process.execPath, [CLI, ...args], { encoding: "utf8" });
    expect(run("weigh", file)).toContain("Lights");
    run("report", file, "--out", `${file}.pdf`);
    expect(readFileSync(`${file}.pdf`).subarray(0, 5).toString()).toBe("%PDF-");
    await app.startServer();
    await context.close();
  });
});

/** A photograph as a camera might take it, large enough to be made smaller. */
async function pictureOf(page: Page): Promise<Buffer> {
  const base64 = await page.evaluate(async () => {
    const canvas = new OffscreenCanvas(2400, 1800);
    const context = canvas.getContext("2d");
    if (context === null) throw new Error("no canvas");
    context.fillStyle = "#777";
    context.fillRect(0, 0, 2400, 1800);
    context.fillStyle = "#b63";
    context.fillRect(300, 400, 900, 700);
    const bytes = new Uint8Array(await (await canvas.convertToBlob({ type: "image/jpeg" })).arrayBuffer());
    return btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join(""));
  });
  return Buffer.from(base64, "base64");
}
