import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { PassThrough, Readable } from "node:stream";
import type { InspectionFile } from "@good-grounds/inspection";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { run } from "../../apps/cli/src/run.ts";
import { dutiesOfData } from "../../apps/field/src/engine/service/duties.ts";
import { assemble } from "../../packages/assembly/src/index.ts";
import { dutyLine, dutyWords } from "../../packages/report/src/index.ts";
import { reportModel } from "../../packages/report/src/pdf/model.ts";
import { type Job, jobFile } from "./job.ts";

let folder = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "good-grounds-duties-"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** What a command writes, with its exit code; lines are joined where a word wrap parted them. */
async function command(...args: readonly string[]) {
  const [stdout, stderr] = [new PassThrough(), new PassThrough()];
  const parts: Buffer[] = [];
  stdout.on("data", (part: Buffer) => parts.push(part));
  const code = await run(args, { stdin: Readable.from([]), stdout, stderr, columns: 80, interactive: false });
  return { code, out: Buffer.concat(parts).toString(), err: String(stderr.read() ?? "") };
}

function written(name: string, file: InspectionFile): string {
  const path = join(folder, name);
  writeFileSync(path, JSON.stringify(file));
  return path;
}

const oneLine = (text: string) => text.replaceAll(/\s+/g, " ");
const JOB: Job = {
  classes: ["C1", "C2"],
  letting: { occupied: true, orderedBy: "agent" },
  conclusion: { workWithin: { days: 14 } },
};

describe("what the law asks is the same wherever it is shown", () => {
  const file = jobFile(JOB);
  const { duties } = assemble(file);
  const work = duties.find(({ id }) => id === "england-work");
  const nearest = "2026-11-23";

  test("the nearest date is that of the work, by the report's shorter period", () => {
    expect(work?.time.day).toBe(nearest);
    expect(duties.find(({ time }) => time.day !== null)?.id).toBe("england-work");
  });

  test("in the terminal, all of it with --all", async () => {
    const path = written("job.json", file);
    const short = await command("weigh", path);
    expect(oneLine(short.out)).toContain("Work and investigations done: by 23 November 2026");
    expect(oneLine(short.out)).toContain("Reminders, not legal advice.");
    expect(oneLine(short.out)).toContain("Ordered by: the letting agent.");
    const all = oneLine((await command("weigh", path, "--all")).out);
    for (const duty of duties) {
      expect(all).toContain(dutyLine(duty));
      expect(all).toContain(dutyWords(duty).grounds);
    }
    expect(all).toContain("the law's own is 28 days");
    expect(all).toContain("from memory, to be checked");
  });

  test("in JSON, and as a column of a folder", async () => {
    const path = written("job.json", file);
    const json = JSON.parse((await command("weigh", path, "--json")).out) as { duties: { id: string }[] };
    expect(json.duties.map(({ id }) => id)).toEqual(duties.map(({ id }) => id));
    const { out } = await command("weigh", path, path);
    expect(out.split("\n")[0]).toContain(`\tlaw: ${nearest} Work and investigations done, and 2 more with a date\t`);
  });

  test("on the first page and in its own section of the report", () => {
    const { data } = reportModel(assemble(file, true));
    const first = data.first as { readonly law: readonly string[]; readonly "law-note": string };
    expect(first.law).toContain(work === undefined ? "" : dutyLine(work));
    expect(first["law-note"]).toContain("Reminders, not legal advice.");
    const section = data.duties as { readonly groups: readonly { readonly rows: readonly (readonly string[])[] }[] };
    const rows = section.groups.flatMap(({ rows: all }) => all);
    expect(rows.length).toBe(duties.length);
    expect(rows.flat()).toEqual(expect.arrayContaining(duties.map((duty) => dutyWords(duty).grounds)));
  });

  test("in the app, also of a job that has hardly begun", () => {
    const view = dutiesOfData(JSON.parse(JSON.stringify(file)));
    expect(view.duties.map(({ line }) => line)).toEqual(duties.map((duty) => dutyLine(duty)));
    expect(view.calendar).toContain("BEGIN:VCALENDAR");
    const begun = dutiesOfData({});
    expect(begun.duties.length).toBeGreaterThan(10);
    for (const { line } of begun.duties) expect(line).toContain("(if ");
    expect(begun.calendar).toBeUndefined();
  });
});

test("what would apply is told as that everywhere, and nothing of it as what applies", async () => {
  const nation = { notKnown: "not-verified", reason: "border" } as const;
  const file = jobFile({ classes: ["C2"], nation });
  const out = oneLine((await command("weigh", written("unknown.json", file))).out);
  expect(out).toContain("? Work and investigations done: by 7 December 2026 (if the premises are in England)");
  expect(out).not.toContain("§");
  const { data } = reportModel(assemble(file, true));
  const { groups } = data.duties as { readonly groups: readonly { readonly title: string }[] };
  expect(groups.map(({ title }) => title)).toEqual(["What would apply, depending on what is not known"]);
});

test("a home of an owner who lives there: no date, and that is not said as if nothing were to be done", async () => {
  const file = jobFile({ tenure: "owner-occupied", classes: ["C2"] });
  const { data } = reportModel(assemble(file, true));
  const { law } = data.first as { readonly law: readonly string[] };
  expect(law.join(" ")).not.toMatch(/by \d{4}/);
  const { out } = await command("weigh", written("owner.json", file));
  expect(out).toContain("What the law asks.");
});

describe("goodgrounds calendar", () => {
  test("writes a calendar, and writes it anew over an earlier one", async () => {
    const path = written("job.json", jobFile(JOB));
    const out = join(folder, "dates.ics");
    for (const _ of [1, 2]) expect((await command("calendar", path, "--out", out)).code).toBe(0);
  });

  test("replaces nothing else, and not the file it reads", async () => {
    const path = written("job.json", jobFile(JOB));
    const other = join(folder, "notes.txt");
    writeFileSync(other, "my notes");
    const refused = await command("calendar", path, "--out", other);
    expect(refused.code).toBe(2);
    expect(refused.err).toContain("a file that is no calendar stands there");
    expect((await command("calendar", path, "--out", path)).err).toContain("Name another file for the calendar.");
    expect((await command("calendar", path)).err).toContain("--out PATH");
    expect((await command("calendar", "--out", other)).err).toContain("name one inspection file");
  });

  test("says so where no duty has a date, and writes nothing", async () => {
    const path = written("owner.json", jobFile({ tenure: "owner-occupied" }));
    const { code, err, out } = await command("calendar", path, "--out", join(folder, "none.ics"));
    expect([code, out]).toEqual([0, ""]);
    expect(err).toContain("no duty with a date");
  });
});
