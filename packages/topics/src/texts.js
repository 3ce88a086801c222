import { readdirSync, readFileSync } from "node:fs";

/** See texts.d.ts. In plain script, so that no package which only uses topics has to know Node's own types. */
export function ownTexts() {
  const folder = new URL("../text/", import.meta.url);
  return readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(".topic"))
    .map((name) => name.replaceAll("\\", "/"))
    .sort()
    .map((file) => ({ file, text: readFileSync(new URL(file, folder), "utf8") }));
}
