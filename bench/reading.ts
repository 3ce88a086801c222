/** Reading and checking a text against reading it as JSON alone, and the whole judgement of a job from its text. */
import { readFileSync } from "node:fs";
import { assemble, misfitsOf } from "@good-grounds/assembly";
import { type InspectionFile, parseInspection, resolveInstallation } from "@good-grounds/inspection";
import { outcomeOf, reasonObservations, weigh } from "@good-grounds/judgement";
import { bestOf, type Row } from "./measure.ts";

const EXAMPLES = ["terraced-house", "farmhouse", "workshop"] as const;

const textOf = (name: string) => readFileSync(new URL(`../examples/${name}.json`, import.meta.url), "utf8");

function fileOf(text: string): InspectionFile {
  const parsed = parseInspection(text);
  if (!parsed.ok) throw new Error("example does not parse");
  return parsed.file;
}

/** The three examples as they are printed and on one line, against JSON.parse of the same. */
export function benchReading(): readonly Row[] {
  return ["as printed", "on one line"].flatMap((how) => {
    const texts = EXAMPLES.map((name) =>
      how === "as printed" ? textOf(name) : JSON.stringify(JSON.parse(textOf(name))),
    );
    const best = bestOf(
      { json: () => texts.map((text) => JSON.parse(text)), read: () => texts.map((text) => parseInspection(text)) },
      60,
      20,
    );
    return [
      { what: `JSON.parse alone, three examples ${how}`, value: best.json, unit: "ms" },
      { what: "read and checked", value: best.read, unit: "ms", ratio: best.read / best.json, target: 4 },
    ];
  });
}

/** Everything from the text of a job to what a report or a line is made from. */
export function benchJudgement(): readonly Row[] {
  return EXAMPLES.flatMap((name) => {
    const text = textOf(name);
    const best = bestOf(
      {
        line: () => {
          const installation = resolveInstallation(fileOf(text));
          const weighing = weigh(installation, false);
          return outcomeOf(
            installation,
            weighing,
            reasonObservations(installation, weighing),
            misfitsOf(installation, weighing),
          );
        },
        whole: () => assemble(fileOf(text)),
      },
      60,
    );
    return [
      { what: `${name}: outcome and verdicts from the text`, value: best.line, unit: "ms" },
      {
        what: `${name}: whole judgement with grounds and misfits from the text`,
        value: best.whole,
        unit: "ms",
        target: 5,
      },
    ];
  });
}
