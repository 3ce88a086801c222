import { appInBrowser, PHONE } from "/work/main/checks/field/app-in-browser.ts";

const app = await appInBrowser("readings-look");
const out = "/work/main/out/field/look-d";

import { mkdirSync } from "node:fs";

mkdirSync(out, { recursive: true });
const D = ["job", "demonstration"];
const want = process.argv.slice(2);
const screens: Record<string, string[]> = {
  supply: [...D, "supply"],
  supplyr: [...D, "supply", "readings"],
  inst: [...D, "installation"],
  board: [...D, "installation", "cu"],
  circuit: [...D, "installation", "cu", "c1"],
  readings: [...D, "readings"],
  rboard: [...D, "readings", "cu"],
  rcirc: [...D, "readings", "cu", "c1"],
  rcirc5: [...D, "readings", "cu", "c5"],
  pictures: [...D, "pictures"],
};
const sizes: Record<string, [number, number]> = { p: [360, 740], t: [820, 1180], d: [1280, 800] };
for (const [sn, [width, height]] of Object.entries(sizes))
  for (const scheme of ["light", "dark"] as const) {
    if (want.length && !want.some((w) => w.startsWith(sn + (scheme === "dark" ? "d" : "") + ":"))) continue;
    const ctx = await app.fresh({
      ...PHONE,
      isMobile: sn !== "d",
      viewport: { width, height },
      colorScheme: scheme,
      deviceScaleFactor: sn === "p" ? 2 : 1,
    });
    const page0 = await app.at(ctx, ...D);
    page0.on("pageerror", (e) => console.log("ERR", e.message));
    page0.on("console", (m) => m.type() === "error" && console.log("CON", m.text()));
    for (const [name, steps] of Object.entries(screens)) {
      const w = want.find((x) => x.startsWith(sn + (scheme === "dark" ? "d" : "") + ":"));
      if (w && !w.split(":")[1].split(",").includes(name) && w.split(":")[1] !== "all") continue;
      const page = await app.at(ctx, ...steps);
      await page.waitForTimeout(600);
      if (name.startsWith("rcirc") || name === "rboard" || name === "supplyr") {
        const el = page.locator(".reading input").nth(name === "rcirc5" ? 4 : 2);
        await el.focus();
        await page.waitForTimeout(300);
      }
      await page.screenshot({
        path: `${out}/${sn}${scheme === "dark" ? "d" : ""}-${name}.png`,
        fullPage: name === "pictures" && sn === "p" ? false : false,
      });
    }
    await ctx.close();
  }
await app.close();
