import type { Fault } from "./faults/fault.ts";
import type { FaultyResult } from "./faulty.ts";
import { careOf } from "./job.ts";
import type { SoundCount } from "./sound.ts";
import { share } from "./wilson.ts";

const VERDICTS = [
  ["not-met", "Not met"],
  ["too-near", "Too near to call"],
  ["not-known", "Not known"],
] as const;

/** Tables of what was raised on sound jobs. */
export function soundLines(counts: readonly SoundCount[]): readonly string[] {
  const head = (what: string) => [
    `| ${what} | ${counts.map(({ level }) => `level ${level}`).join(" | ")} |`,
    `|---|${counts.map(() => "---|").join("")}`,
  ];
  const row = (words: string, cell: (count: SoundCount) => string) => `| ${words} | ${counts.map(cell).join(" | ")} |`;
  const ofJobs = (name: string) => (count: SoundCount) => share(count.tally.jobs(name), count.jobs);
  const lines = [
    "## Sound jobs",
    "",
    ...counts.map(({ level }) => `- Level ${level}: ${careOf(level).says}.`),
    "",
    ...head("jobs with"),
    row("jobs, circuits", ({ jobs, circuits }) => `${jobs}, ${circuits}`),
    row("a check not met", ofJobs("not-met")),
    row("a check too near to call", ofJobs("too-near")),
    row("readings that clearly do not agree, what is told rightly apart", ofJobs("clear")),
    row("readings that may not agree, what is told rightly apart", ofJobs("possible")),
    row("a clear word of a spur in a ring", ofJobs("clear a spur")),
    row("a clear word of another path to earth that is there", ofJobs("clear a path that is there")),
    row("more than 5 lines not met, too near or clear", ofJobs("screen full")),
    row("an outcome other than satisfactory", (count) =>
      share(count.jobs - count.tally.jobs("outcome satisfactory"), count.jobs),
    ),
    "",
  ];
  for (const [verdict, title] of VERDICTS) lines.push(...byCheck(counts, verdict, title, head, row));
  lines.push("### Readings that do not agree, by what leads", "", ...head("jobs (times)"));
  for (const how of ["clear", "possible"])
    for (const name of namesOf(counts, `${how} `).filter((one) => one.includes(":")))
      lines.push(row(name, ({ tally }) => `${tally.jobs(name)} (${tally.times(name)})`));
  lines.push(
    "",
    "### Three checks alone, figures typed in without a word on the instrument",
    "",
    ...head("of circuits asked"),
  );
  for (const check of ["zs-agreement", "ring-continuity", "r1r2-length"])
    for (const verdict of ["not-met", "too-near"])
      lines.push(row(`${check}, ${verdict}`, (count) => ofAsked(count, check, verdict)));
  return [...lines, ""];
}

function ofAsked({ tally }: SoundCount, check: string, verdict: string): string {
  const all = ["met", "not-met", "too-near", "not-known", "not-applicable"];
  const asked = all.reduce((sum, one) => sum + tally.times(`by hand ${one} ${check}`), 0);
  return share(tally.times(`by hand ${verdict} ${check}`), asked);
}

function namesOf(counts: readonly SoundCount[], beginning: string): readonly string[] {
  return [...new Set(counts.flatMap(({ tally }) => tally.names(beginning)))].sort();
}

function byCheck(
  counts: readonly SoundCount[],
  verdict: string,
  title: string,
  head: (what: string) => readonly string[],
  row: (words: string, cell: (count: SoundCount) => string) => string,
): readonly string[] {
  const names = namesOf(counts, `${verdict} `);
  return [
    `### ${title}, by check`,
    "",
    ...head("jobs (times)"),
    ...names.map((name) =>
      row(name.slice(verdict.length + 1), ({ tally }) => `${tally.jobs(name)} (${tally.times(name)})`),
    ),
    "",
  ];
}

interface Tried {
  readonly fault: Fault;
  readonly results: readonly FaultyResult[];
}

const count = <T>(list: readonly T[], is: (one: T) => boolean) => list.filter(is).length;

/** Tables of what was found of planted faults. */
export function faultLines(tried: readonly Tried[]): readonly string[] {
  const seen = tried.flatMap(({ fault, results }) => (fault.hidden ? [] : results.filter(({ traced }) => traced)));
  const wrong = tried.flatMap(({ fault, results }) => (fault.innocent ? [] : results.filter(({ traced }) => traced)));
  const clear = seen.filter(({ clear }) => clear);
  return [
    "## One fault a job",
    "",
    "Sizes are drawn without a threshold. *Traced*: what is written differs at all from the same job without the fault. *Found*: a check not met, readings that do not agree or an open point, at its place, that the same job without the fault does not have. *First*: of those with readings that clearly do not agree, the leading explanation names the fault; *first two*: one of the first two does; *tied*: it is among those said not to be told apart. *Innocent lead*: something is wrong, an explanation that nothing is leads, and it is said to be told apart. *Said not to account*: the first line says that even the leading explanation leaves readings further off than the meter explains. Each kind is tried at all four levels of care in turn.",
    "",
    `- Kinds: ${tried.length}. Found of those that left a trace: ${share(
      count(seen, ({ found }) => found),
      seen.length,
    )}.`,
    `- Named first, of clear misfits: ${share(
      count(clear, ({ first }) => first),
      clear.length,
    )}; among the first two: ${share(
      count(clear, ({ firstTwo }) => firstTwo),
      clear.length,
    )}.`,
    `- Led by an innocent explanation said to be told apart: ${share(
      count(wrong, ({ innocentLead }) => innocentLead),
      wrong.length,
    )} of jobs in which something is wrong.`,
    "",
    ...byLevel(seen),
    "",
    "| kind | traced | found | by check, misfit, open | clear | first | first two | tied | innocent lead | said not to account |",
    "|---|---|---|---|---|---|---|---|---|---|",
    ...tried.map(faultRow),
    "",
    ...bySize(tried),
    ...leads(tried),
  ];
}

function byLevel(seen: readonly FaultyResult[]): readonly string[] {
  return [1, 2, 3, 4].map((level) => {
    const here = seen.filter((one) => one.level === level);
    return `- At level ${level}: found ${share(
      count(here, ({ found }) => found),
      here.length,
    )}.`;
  });
}

function faultRow({ fault, results }: Tried): string {
  const traced = results.filter(({ traced }) => traced);
  const by = (what: string) => count(traced, (one) => one.by === what && one.found);
  const clear = traced.filter(({ clear }) => clear);
  const cells = [
    `${fault.says}${fault.innocent ? " (sound)" : ""}`,
    `${traced.length} of ${results.length}`,
    share(
      count(traced, ({ found }) => found),
      traced.length,
    ),
    `${by("check")}, ${by("misfit")}, ${by("open")}`,
    String(clear.length),
    String(count(clear, ({ first }) => first)),
    String(count(clear, ({ firstTwo }) => firstTwo)),
    String(count(clear, ({ amongTied }) => amongTied)),
    String(count(traced, ({ innocentLead }) => innocentLead)),
    String(count(clear, ({ unaccounted }) => unaccounted)),
  ];
  return `| ${cells.join(" | ")} |`;
}

/** Found by size, in five bands from the smallest to the largest drawn. */
function bySize(tried: readonly Tried[]): readonly string[] {
  const lines = [
    "### Found by size",
    "",
    "From the smallest fifth of the sizes drawn to the largest, each with the greatest size in it.",
    "",
    "| kind | smallest | | | | largest |",
    "|---|---|---|---|---|---|",
  ];
  for (const { fault, results } of tried) {
    const sized = results
      .filter(({ size, traced }) => size !== undefined && traced)
      .sort((a, b) => (a.size ?? 0) - (b.size ?? 0));
    if (fault.unit === undefined || sized.length < 10) continue;
    const cells = [0, 1, 2, 3, 4].map((part) => {
      const band = sized.slice(Math.floor((part * sized.length) / 5), Math.floor(((part + 1) * sized.length) / 5));
      return `${count(band, ({ found }) => found)} of ${band.length} to ${(band.at(-1)?.size ?? 0).toPrecision(2)} ${fault.unit}`;
    });
    lines.push(`| ${fault.says} | ${cells.join(" | ")} |`);
  }
  return [...lines, ""];
}

/** What led where something was told of and the fault was not named first. */
function leads(tried: readonly Tried[]): readonly string[] {
  const lines = ["### What led instead", "", "| kind | leads that do not name it |", "|---|---|"];
  for (const { fault, results } of tried) {
    const others = new Map<string, number>();
    for (const { clear, first, lead } of results) if (clear && !first) others.set(lead, (others.get(lead) ?? 0) + 1);
    const most = [...others].sort((a, b) => b[1] - a[1]).slice(0, 5);
    if (most.length > 0)
      lines.push(`| ${fault.says} | ${most.map(([lead, times]) => `${times} ${lead}`).join("; ")} |`);
  }
  return lines;
}
