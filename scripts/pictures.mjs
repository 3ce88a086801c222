// npm run pictures: takes the pictures of the README anew. Needs chromium and pdftoppm; npm run build comes first.
import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { chromium } from "playwright-core";
import { root } from "./lib/run.mjs";
import { serve } from "./lib/static-server.mjs";

const cli = join(root, "apps/cli/bin/goodgrounds.mjs");
const example = join(root, "examples/terraced-house.json");
/** Lines of the terminal that fit the picture. */
const LINES = 47;
const WIDTH = 700;
const HEIGHT = 812;

const goodgrounds = (...args) => execFileSync(process.execPath, [cli, ...args], { encoding: "utf8" });

function terminal(folder) {
  const text = goodgrounds("weigh", example).split("\n").slice(0, LINES).join("\n");
  const escaped = text.replaceAll("&", "&amp;").replaceAll("<", "&lt;");
  const page = join(folder, "weigh.html");
  const style = "margin:14px 18px;background:#fbf8f2;color:#1d2a44;font:13px/16.6px 'DejaVu Sans Mono',monospace";
  writeFileSync(
    page,
    `<!doctype html><meta charset="utf-8"><body style="${style}"><pre style="font:inherit;margin:0">${escaped}</pre>`,
  );
  const shown = [
    "--headless",
    "--no-sandbox",
    "--disable-gpu",
    "--hide-scrollbars",
    `--window-size=${WIDTH},${HEIGHT}`,
  ];
  execFileSync("chromium", [...shown, `--screenshot=${join(root, "docs/weigh.png")}`, `file://${page}`], {
    stdio: "ignore",
  });
}

function firstPage(folder) {
  const pdf = join(folder, "report.pdf");
  goodgrounds("report", example, "--out", pdf);
  execFileSync("pdftoppm", ["-r", "110", "-png", "-f", "1", "-singlefile", pdf, join(root, "docs/report")]);
}

/** Screens of the field app, side by side as on three phones. */
async function phones(folder) {
  const dist = join(folder, "field");
  execFileSync(process.execPath, [join(root, "apps/field/build.mjs"), dist]);
  const { address, stop } = await serve(dist);
  const browser = await chromium.launch({
    executablePath: "/usr/bin/chromium",
    args: ["--no-sandbox", "--disable-gpu"],
  });
  const context = await browser.newContext({ viewport: { width: 360, height: 740 } });
  const page = await context.newPage();
  await page.goto(address);
  const shots = [];
  for (const screen of ["installation", "readings/cu/c1", "observations/o4"]) {
    await page.goto(`${address}#/job/demonstration/${screen}`);
    // The judging runs beside the screen; its answers come a moment later.
    await page.waitForTimeout(2500);
    const reasoning = page.getByRole("heading", { name: "The reasoning" });
    if ((await reasoning.count()) > 0) await reasoning.evaluate((heading) => heading.scrollIntoView());
    shots.push((await page.screenshot()).toString("base64"));
  }
  await page.setViewportSize({ width: 1140, height: 770 });
  const pictures = shots.map((shot) => `<img style="border:1px solid #c9c5bb" src="data:image/png;base64,${shot}">`);
  await page.setContent(`<body style="margin:14px;display:flex;gap:14px;background:#fff">${pictures.join("")}`);
  await page.screenshot({ path: join(root, "docs/field.png") });
  await browser.close();
  await stop();
}

const folder = mkdtempSync(join(tmpdir(), "good-grounds-pictures-"));
try {
  terminal(folder);
  firstPage(folder);
  await phones(folder);
} finally {
  rmSync(folder, { recursive: true, force: true });
}
