// npm run pictures: takes the pictures of the README anew. Needs chromium and pdftoppm; npm run build comes first.
import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { root } from "./lib/run.mjs";

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

const folder = mkdtempSync(join(tmpdir(), "good-grounds-pictures-"));
try {
  terminal(folder);
  firstPage(folder);
} finally {
  rmSync(folder, { recursive: true, force: true });
}
