import { readFileSync } from "node:fs";
import { assemble } from "@good-grounds/assembly";
import { forOthers, type InspectionFile, parseInspectionData } from "@good-grounds/inspection";
import { OPEN, OUTCOME, openPointWords, renderWeighing } from "@good-grounds/report";
import { describe, expect, test } from "vitest";
import { weighingJson } from "../../apps/cli/src/json.ts";
import { summarise } from "../../apps/cli/src/many/summary.ts";
import { outcomeOfData as inTheApp } from "../../apps/field/src/engine/service/outcome.ts";
import { Chance } from "../../examples/simulate/chance.ts";
import { Drawings } from "../../packages/report/src/pdf/drawings.ts";
import { firstPage } from "../../packages/report/src/pdf/sections/first-page.ts";
import { ledger } from "../../packages/report/src/pdf/sections/ledger.ts";
import { shortened } from "../../packages/report/src/pdf/sections/shortened.ts";
import { randomInstallation, writtenFile } from "../diagnosis/random-installation.ts";
import { complete } from "./complete.ts";

type Loose = { [name: string]: Loose } & Loose[];

const example = (name: string) =>
  JSON.parse(readFileSync(new URL(`../../examples/${name}.json`, import.meta.url), "utf8")) as Loose;

function sound(edit: (file: Loose) => void = () => undefined): Loose {
  const data = complete(writtenFile(randomInstallation(4001, new Chance(4001)))) as unknown as Loose;
  edit(data);
  return JSON.parse(JSON.stringify(data)) as Loose;
}

const REASON = "Lamp holder of the porch only, switched in both poles and marked so.";

/** A wrong polarity, and an observation that names it. */
const answered = (classification: string) =>
  sound((file) => {
    const board = file.boards?.[0];
    const circuit = board?.circuits?.[2];
    Object.assign(circuit?.readings as object, { polarity: "incorrect" });
    const choice = { classification, reason: REASON, by: "inspector" };
    const at = { board: board?.id, circuit: circuit?.id, place: "hall", what: "Polarity of the lights is wrong." };
    Object.assign(file, { observations: [{ id: "o1", ...at, answers: [{ check: "polarity" }], choice }] });
  });

const deadRcd = () =>
  sound((file) => {
    const rcd = file.boards?.[0]?.rcds?.[0];
    Object.assign(rcd as object, {
      delay: "general",
      residual: "30 mA",
      readings: { atRated: { shown: ">300 ms" }, button: "trips" },
    });
    for (const circuit of (file.boards?.[0]?.circuits ?? []) as Loose[]) Object.assign(circuit, { rcd: undefined });
  });

const FILES: readonly (readonly [name: string, data: () => Loose, outcome: keyof typeof OUTCOME])[] = [
  ["a sound one", sound, "satisfactory"],
  ["one with a matter to be investigated", () => answered("FI"), "satisfactory"],
  ["one where a reason alone stands for a polarity", () => answered("none"), "satisfactory"],
  ["one with a dead RCD and a button that trips", deadRcd, "not-determined"],
  [
    "one that contradicts itself",
    () => sound((file) => Object.assign(file, { conclusion: { outcome: "unsatisfactory" } })),
    "not-determined",
  ],
  [
    "one with a length written wrongly",
    () =>
      sound((file) => {
        Object.assign(file.boards?.[0]?.circuits?.[0]?.cable as object, { length: "180 m" });
      }),
    "not-determined",
  ],
  ["the terraced house", () => example("terraced-house"), "unsatisfactory"],
  ["the farmhouse", () => example("farmhouse"), "unsatisfactory"],
  ["the workshop", () => example("workshop"), "unsatisfactory"],
];

/** Everything that follows for a file of plain data, as reports are made from it. */
function assembled(data: Loose) {
  const parsed = parseInspectionData(structuredClone(data));
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues.slice(0, 3)));
  return assemble(forOthers(parsed.file) as InspectionFile);
}

/** Words joined again where a line ended. */
const flat = (text: string) => text.replaceAll(/\s+/g, " ");

describe.each(FILES)("%s", (_, data, wanted) => {
  const file = data();
  const input = assembled(file);
  const { outcome, points, dismissed, investigate } = input.outcome;
  const whole = points.map((point) => openPointWords(point, input, true));
  const short = points.map((point) => openPointWords(point, input));

  test("the outcome and how much stands open are these", () => {
    expect(outcome).toBe(wanted);
    if (wanted === "satisfactory") expect(whole).toEqual([]);
    if (wanted === "not-determined") expect(whole.length).toBeGreaterThan(0);
  });

  test("in the terminal", () => {
    const text = flat(renderWeighing(input, { width: 100, all: true }));
    expect(text).toContain(`Outcome: ${OUTCOME[outcome]}`);
    if (points.length > 0) expect(text).toContain(OPEN.heading(points.length));
    let from = 0;
    for (const words of whole) {
      const at = text.indexOf(flat(words), from);
      expect(at, words).toBeGreaterThan(from);
      from = at;
    }
    for (const { reason } of dismissed) expect(text).toContain(reason);
    expect(text.includes(OPEN.investigateTitle)).toBe(investigate.length > 0);
  });

  test("in JSON", () => {
    const { outcome: json } = JSON.parse(JSON.stringify(weighingJson(input, false)));
    expect(json.outcome).toBe(outcome);
    expect(json.points.map(({ words }: { words: string }) => words)).toEqual(whole);
    expect(json.dismissed.map(({ reason }: { reason: string }) => reason)).toEqual(
      dismissed.map(({ reason }) => reason),
    );
    expect(json.investigate.map(({ observation }: { observation: string }) => observation)).toEqual(investigate);
  });

  test("in the line of a folder", () => {
    const bytes = new TextEncoder().encode(JSON.stringify(file));
    const { out, problem } = summarise({ name: "x", bytes }, { json: false, grounds: false, probability: false });
    expect(problem).toBe("");
    const [, said, open = ""] = out.split("\t");
    expect(said).toBe(OUTCOME[outcome]);
    expect(open.startsWith(short[0] === undefined ? OPEN.count(0) : `${OPEN.count(points.length)}: ${short[0]}`)).toBe(
      true,
    );
    expect(open.includes(OPEN.dismissedCount(dismissed.length))).toBe(dismissed.length > 0);
    expect(open.includes(OPEN.investigateCount(investigate.length))).toBe(investigate.length > 0);
  });

  test("on page one, and whole in its section", () => {
    const page = firstPage(input, new Drawings());
    expect(page.derived.toLowerCase()).toBe(OUTCOME[outcome].toLowerCase());
    expect(page["points-title"]).toBe(points.length === 0 ? "" : OPEN.heading(points.length));
    const shown = points.length > 4 ? short.slice(0, 3) : short;
    expect(page.points.slice(0, shown.length)).toEqual(shown.map((words) => shortened(words, 170)));
    expect(ledger(input).list).toEqual(whole);
    expect(page.dismissed.join(" ").includes(REASON)).toBe(dismissed.length > 0);
    expect(page.investigate).toHaveLength(investigate.length);
  });

  test("in the app", () => {
    const view = inTheApp(file as never);
    expect(view.outcome).toBe(outcome);
    expect(view.points.map(({ words }) => words)).toEqual(short);
    expect(view.dismissed).toHaveLength(dismissed.length);
    expect(view.investigate).toHaveLength(investigate.length);
  });
});
