import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { PassThrough } from "node:stream";
import { assemble } from "@good-grounds/assembly";
import { type InspectionFile, parseInspectionData } from "@good-grounds/inspection";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { run } from "../../apps/cli/src/run.ts";
import type { Data } from "../../apps/field/src/engine/protocol.ts";
import { openService } from "../../apps/field/src/engine/service/index.ts";
import { reportModel } from "../../packages/report/src/pdf/model.ts";
import { FAULTS } from "../alarms/faults/index.ts";
import { careOf, faultyJob } from "../alarms/job.ts";

// Readings that do not agree, through the five ways out: terminal, JSON, lines of a folder, app and report.

let folder = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "every-way-out-"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

async function command(...args: readonly string[]): Promise<string> {
  let out = "";
  const stdout = new PassThrough();
  stdout.on("data", (chunk: Buffer) => {
    out += chunk.toString("utf8");
  });
  const host = { stdin: new PassThrough(), stdout, stderr: new PassThrough(), columns: 80, interactive: false };
  expect(await run(args, host)).toBe(0);
  await new Promise((done) => setImmediate(done));
  return out;
}

/** A misfit as the JSON has it. */
interface Told {
  readonly place: string;
  readonly kind: string;
  readonly title: string;
  readonly clear: boolean;
  readonly explanations: readonly { readonly words: string; readonly share: number }[];
}

/** What has to be said of a misfit everywhere: its title with its certainty, and its leading explanation with its share. */
function saidOf({ title, clear, explanations: [leading] }: Told): readonly [title: string, leading: string] {
  const share = Math.min(99, Math.max(1, Math.round(100 * (leading?.share ?? Number.NaN))));
  return [clear ? title : `${title} (less clear)`, `Most likely (${share} %): ${leading?.words}`];
}

const oneLine = (text: string) => text.replaceAll(/\s+/g, " ");

const example = (name: string): unknown =>
  JSON.parse(readFileSync(new URL(`../../examples/${name}.json`, import.meta.url), "utf8"));

/** A simulated job with one fault, by a careful hand. */
function planted(id: string): unknown {
  const fault = FAULTS.find((one) => one.id === id);
  const job = fault && faultyJob(fault, `every-way-out/${id}`, careOf(1));
  if (job === undefined || job === null) throw new Error(`no house has a place for ${id}`);
  return JSON.parse(JSON.stringify(job.file));
}

function parsed(data: unknown): InspectionFile {
  const found = parseInspectionData(structuredClone(data));
  if (!found.ok) throw new Error(JSON.stringify(found.issues.slice(0, 3)));
  return found.file;
}

/** The same file with every misfit chosen to be shown in the report. */
function allShared(file: InspectionFile, told: readonly Told[]): InspectionFile {
  const data = JSON.parse(JSON.stringify(file));
  for (const { place, kind } of told) {
    let at = data;
    for (const step of place.split("/").slice(1)) at = at[step];
    const shared: { kind: string }[] = at.sharedMisfits ?? [];
    at.sharedMisfits = shared.some((one) => one.kind === kind) ? shared : [...shared, { kind }];
  }
  return parsed(data);
}

const JOBS = [
  ["the terraced house", () => example("terraced-house")],
  ["the workshop", () => example("workshop")],
  ["a ring whose protective conductor is open", () => planted("ring-open-cpc")],
  ["a slipped decimal", () => planted("decimal")],
  ["leads that were not nulled", () => planted("leads")],
  ["a shared neutral", () => planted("neutral-borrowed")],
  ["a joint in a ring", () => planted("ring-joint-neutral")],
] as const;

describe("readings that do not agree are the same, with the same certainty, in every way out", () => {
  test.each(JOBS)("%s", async (_, job) => {
    const data = job();
    const path = join(folder, "job.json");
    writeFileSync(path, JSON.stringify(data));
    const { misfits } = JSON.parse(await command("weigh", path, "--json")) as { readonly misfits: readonly Told[] };
    expect(misfits.length).toBeGreaterThan(0);
    const said = misfits.map(saidOf);

    const lines = (await command("weigh", path, path, "--json")).trim().split("\n");
    expect(lines.length).toBe(2);
    for (const line of lines) expect(JSON.parse(line).misfits).toEqual(misfits);

    const terminal = oneLine(await command("weigh", path, "--all"));
    for (const words of said.flat()) expect(terminal).toContain(oneLine(words));
    expect(terminal.split("Most likely (").length - 1).toBe(said.length);

    const inApp = await openService().misfits(data as Data);
    expect(inApp.map(({ title }) => title)).toEqual(said.map(([title]) => title));
    expect(inApp.map(({ clear }) => clear)).toEqual(misfits.map(({ clear }) => clear));
    for (const [i, { words }] of inApp.entries()) {
      expect(words.some((one) => one.startsWith(said[i]?.[1] ?? "nothing"))).toBe(true);
    }

    const input = assemble(allShared(parsed(data), misfits));
    const { list } = reportModel(input).data.misfits as {
      readonly list: readonly { readonly title: string; readonly lines: readonly string[] }[];
    };
    const onPage = list.map(({ title, lines: page }) => [title, ...page].join("\n")).sort();
    expect(onPage.length).toBe(said.length);
    for (const [title, leading] of said)
      expect(
        onPage.some((page) => page.startsWith(title) && page.includes(leading)),
        title,
      ).toBe(true);
  });
});
