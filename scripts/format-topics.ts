// npm run format: writes the texts of topics in their one spelling; with --check says which are not, and writes nothing.
import { writeFileSync } from "node:fs";
import { faultText, formatted, ownTexts } from "@good-grounds/topics/texts";

const folder = new URL("../packages/topics/text/", import.meta.url);
const onlyCheck = process.argv.includes("--check");
let wrong = 0;
for (const { file, text } of ownTexts()) {
  const made = formatted(text, file);
  for (const fault of made.faults) console.error(`${faultText(fault, text)}\n`);
  if (made.text === text) continue;
  wrong += 1;
  if (made.text === undefined || onlyCheck)
    console.error(`${file} is not in its one spelling; npm run format writes it`);
  else writeFileSync(new URL(file, folder), made.text);
}
if (wrong > 0 && onlyCheck) process.exitCode = 1;
