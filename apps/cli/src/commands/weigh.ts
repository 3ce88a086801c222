import { LARGEST, parseInspection } from "@good-grounds/inspection";
import { renderWeighing } from "@good-grounds/report";
import { assemble } from "../assemble.ts";
import { EXIT, type ExitCode, type Host, Stop } from "../host.ts";
import { weighingJson } from "../json.ts";
import type { Line } from "../many/lines.ts";
import { isMany, itemsOf } from "../many/sources.ts";
import { decode, readText } from "../read.ts";
import { issueLines } from "../words.ts";

export interface WeighOptions {
  /** Arguments of every finding shown, or of one check. */
  readonly grounds: boolean | string;
  readonly all: boolean;
  readonly json: boolean;
}

/** `goodgrounds weigh`: one inspection in full, or many as a line each. */
export async function weighCommand(paths: readonly string[], options: WeighOptions, host: Host): Promise<ExitCode> {
  const [only] = paths;
  if (only === undefined) {
    throw new Stop(
      EXIT.input,
      "weigh: no file given. Name an inspection file, a folder, a .jsonl stream, or - for standard input.",
    );
  }
  if (paths.length === 1) {
    if (only === "-") return weighStandardInput(options, host);
    if (!(await isMany(only))) return weighText(only, await readText(only), options, host);
  }
  const { weighMany } = await import("../many/weigh-many.ts");
  return weighMany(itemsOf(paths, host.stdin), many(options), host);
}

function many({ json, grounds }: WeighOptions) {
  return { json, grounds: grounds !== false };
}

/** Standard input is a stream when its first line is a document of its own, otherwise one document. */
async function weighStandardInput(options: WeighOptions, host: Host): Promise<ExitCode> {
  const { linesOf } = await import("../many/lines.ts");
  const lines = linesOf(host.stdin);
  const first = await lines.next();
  if (first.done === true) return weighText("standard input", "", options, host);
  const opening = first.value;
  const second = await lines.next();
  if (second.done === true) return weighText("standard input", textOf(opening), options, host);
  const rest = (async function* () {
    yield opening;
    yield second.value;
    yield* lines;
  })();
  if (isDocument(textOf(opening))) {
    const { itemsOfLines } = await import("../many/sources.ts");
    const { weighMany } = await import("../many/weigh-many.ts");
    return weighMany(itemsOfLines("standard input", rest), many(options), host);
  }
  const text: string[] = [];
  let size = 0;
  for await (const line of rest) {
    const next = textOf(line);
    size += next.length;
    // One document has to be held whole; what is longer than any inspection file is not read on.
    if (size > LARGEST) throw new Stop(EXIT.input, "standard input: far longer than an inspection file can be");
    text.push(next);
  }
  return weighText("standard input", text.join("\n"), options, host);
}

function textOf(line: Line): string {
  return "bytes" in line ? decode(line.bytes, "standard input") : "";
}

function isDocument(text: string): boolean {
  try {
    return typeof JSON.parse(text) === "object";
  } catch {
    return false;
  }
}

function weighText(name: string, text: string, options: WeighOptions, host: Host): ExitCode {
  const parsed = parseInspection(text);
  if (!parsed.ok) {
    if (options.json) {
      host.stdout.write(
        `${JSON.stringify({ format: "good-grounds-problems", version: 1, name, issues: parsed.issues }, null, 2)}\n`,
      );
    }
    host.stderr.write(issueLines(name, parsed.issues));
    return EXIT.input;
  }
  for (const step of parsed.migrated) host.stderr.write(`${name}: written by an older version; ${step}\n`);
  const input = assemble(parsed.file);
  host.stdout.write(
    options.json
      ? `${JSON.stringify(weighingJson(input, options.grounds !== false), null, 2)}\n`
      : renderWeighing(input, { width: Math.min(host.columns ?? 80, 100), all: options.all, grounds: options.grounds }),
  );
  return EXIT.done;
}
