/// <reference lib="dom" />
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { needTool } from "../tools.ts";
import { type AppInBrowser, appInBrowser, faults, kept } from "./app-in-browser.ts";
import { inFolder } from "./own-folder.ts";
import { smallTargets } from "./targets.ts";

const FIRM = fileURLToPath(new URL("../topics/a-firm", import.meta.url));
const STOVE = "topics/socket-behind-stove.topic";

describe.runIf(needTool("chromium"))("a firm's own folder of topics in the app", () => {
  let app: AppInBrowser;
  let work = "";
  beforeAll(async () => {
    app = await appInBrowser("firm-folder");
    work = mkdtempSync(join(tmpdir(), "firm-"));
  });
  afterAll(async () => {
    await app?.close();
    rmSync(work, { recursive: true, force: true });
  });

  const texts = (folder: string) =>
    ["folder.topics", "views.topics", "shared/kitchen.topic", STOVE, "topics/board-blank-missing-more.topic"].map(
      (name) => join(folder, name),
    );
  const choose = async (page: Page, folder: string) => {
    const [chooser] = await Promise.all([
      page.waitForEvent("filechooser"),
      page.getByText("Choose files or a ZIP archive").click(),
    ]);
    await chooser.setFiles(texts(folder));
  };

  test("is told at its fault, taken when well, used offline after a restart, written into the job, and taken off", async () => {
    const bad = join(work, "bad");
    cpSync(FIRM, bad, { recursive: true });
    writeFileSync(
      join(bad, STOVE),
      readFileSync(join(bad, STOVE), "utf8").replace("when not pulled", "when not puled"),
    );
    const profile = join(work, "profile");
    let context = await inFolder(profile);
    let page = await app.at(context, "settings");
    await choose(page, bad);
    await page.getByText(`${STOVE}:26:14  nothing here is called "puled"`).waitFor();
    await page.getByText("Nothing of it was taken").waitFor();
    await page.getByText("No folder is on this device").waitFor();
    expect({ faults: await faults(page), small: await page.evaluate(smallTargets) }).toEqual({ faults: [], small: [] });
    await choose(page, FIRM);
    await page.getByText("Example Electrical (an invented firm) is on this device now").waitFor();
    expect(await page.locator("code.hash").textContent()).toMatch(/^[0-9a-f]{64}$/);
    expect(await faults(page)).toEqual([]);
    await page.getByText("The whole app is on this device").or(page.getByText("not kept on this device")).waitFor();
    await page.evaluate(async () => void (await navigator.serviceWorker.ready));
    await context.close();

    await app.stopServer();
    context = await inFolder(profile);
    page = await app.at(context, "jobs");
    await page.getByRole("button", { name: "New job" }).click();
    await page.getByLabel("Why the inspection is wanted").waitFor();
    const job = /#\/job\/([^/]+)/.exec(page.url())?.[1] ?? "";
    await app.at(context, "job", job, "observations");
    await page
      .getByRole("button", { name: /observation/i })
      .first()
      .click();
    await page.getByRole("searchbox").fill("stove");
    await page.getByRole("button", { name: /^Socket-outlet behind a stove/ }).click();
    await page
      .getByText("Next question")
      .or(page.getByRole("group", { name: /question/i }))
      .first()
      .waitFor();
    await kept(page);
    expect(await page.getByText("Judged with other topics").count()).toBe(0);

    await app.at(context, "settings");
    await page.getByRole("button", { name: "Take the folder off this device" }).click();
    await page.getByText("The folder is off this device").waitFor();
    await app.at(context, "job", job, "observations");
    await page.getByText("Judged with other topics").waitFor();
    await page.getByText(/judged with topics of Example Electrical \(an invented firm\) \([0-9a-f]{12}\)/).waitFor();
    expect(await faults(page)).toEqual([]);
    await context.close();
    await app.startServer();
  });
});
