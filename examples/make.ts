/** Writes the invented inspections of this folder. The same seeds give the same bytes on every machine. */
import { writeFileSync } from "node:fs";
import { SCENARIOS, textOf } from "./scenarios/index.ts";

for (const [name, make] of Object.entries(SCENARIOS)) {
  writeFileSync(new URL(`${name}.json`, import.meta.url), textOf(make()));
}
