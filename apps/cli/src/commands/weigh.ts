import { assemble } from "@good-grounds/assembly";
import { CHECKS } from "@good-grounds/computations";
import { renderWeighing } from "@good-grounds/report";
import { readEarlier, withEarlier } from "../earlier.ts";
import { EXIT, type ExitCode, type Host, Stop, widthOf } from "../host.ts";
import { readInspection } from "../inspection.ts";
import { problemsJson, weighingJson } from "../json.ts";
import { judgedWithJson, judgedWithNote } from "../judged-with.ts";
import { isMany, itemsOf } from "../many/sources.ts";
import { decode, gathered, readText } from "../read.ts";
import { thenAndNowJson } from "../then-and-now-json.ts";
import { topicsIn } from "../topics-in.ts";
import { issueLines } from "../words.ts";

export interface WeighOptions {
  /** Arguments of every finding shown, or of one check. */
  readonly grounds: boolean | string;
  readonly all: boolean;
  readonly json: boolean;
  /** How sure each finding is. */
  readonly probability: boolean;
  /** Files of earlier inspections of the same installation. */
  readonly earlier: readonly string[];
  /** The firm's own folder of topics and standing views. */
  readonly topics: string | undefined;
}

const LINE_FEED = 10;

/** `goodgrounds weigh`: one inspection in full, or many as a line each. */
export async function weighCommand(paths: readonly string[], options: WeighOptions, host: Host): Promise<ExitCode> {
  const [only] = paths;
  if (only === undefined) {
    throw new Stop(
      EXIT.input,
      "weigh: no file given. Name an inspection file, a folder, a .jsonl stream, or - for standard input.",
    );
  }
  checkId(options.grounds);
  topicsIn(options.topics);
  if (paths.length === 1) {
    if (only === "-") return weighStandardInput(options, host);
    if (!(await isMany(only))) return weighText(only, await readText(only), options, host);
  }
  refuseEarlier(options);
  const { weighMany } = await import("../many/weigh-many.ts");
  return weighMany(itemsOf(paths, host.stdin), many(options), host);
}

/** Which of many an earlier inspection belongs to is not said. */
function refuseEarlier({ earlier }: WeighOptions): void {
  if (earlier.length > 0) throw new Stop(EXIT.input, "weigh: --earlier goes with one inspection. Weigh it by itself.");
}

/** A check that is not there would show no grounds, and nobody would know why. */
function checkId(grounds: WeighOptions["grounds"]): void {
  if (typeof grounds !== "string" || CHECKS.some(({ id }) => id === grounds)) return;
  throw new Stop(
    EXIT.input,
    `weigh: no check is called ${JSON.stringify(grounds.slice(0, 60))}. The checks are ${CHECKS.map(({ id }) => id).join(", ")}.`,
  );
}

function many({ json, grounds, probability, topics }: WeighOptions) {
  return { json, grounds: grounds !== false, probability, ...(topics === undefined ? {} : { topics }) };
}

/**
 * Standard input is a stream when its first line is a document of its own, otherwise one document. It is split into lines
 * only where it is a stream: a document of very many short lines is read as a whole.
 */
async function weighStandardInput(options: WeighOptions, host: Host): Promise<ExitCode> {
  const name = "standard input";
  const chunks = chunksOf(host.stdin);
  const start = await gathered(leftOpen(chunks), name, (chunk) => chunk.includes(LINE_FEED));
  const end = start.indexOf(LINE_FEED);
  const all = async function* () {
    yield start;
    yield* chunks;
  };
  if (end >= 0 && isDocument(decode(start.subarray(0, end), name))) {
    const { linesOf } = await import("../many/lines.ts");
    const lines = linesOf(all());
    const first = await lines.next();
    const second = await lines.next();
    if (first.done !== true && second.done !== true) {
      refuseEarlier(options);
      const { itemsOfLines } = await import("../many/sources.ts");
      const { weighMany } = await import("../many/weigh-many.ts");
      const stream = async function* () {
        yield first.value;
        yield second.value;
        yield* lines;
      };
      return weighMany(itemsOfLines(name, stream()), many(options), host);
    }
    return weighText(name, decode(start, name), options, host);
  }
  return weighText(name, decode(await gathered(all(), name), name), options, host);
}

async function* chunksOf(stream: AsyncIterable<Uint8Array | string>): AsyncGenerator<Uint8Array> {
  for await (const chunk of stream) yield typeof chunk === "string" ? Buffer.from(chunk) : chunk;
}

/** The same chunks for a reader that stops early, without closing what is read on later. */
function leftOpen(chunks: AsyncGenerator<Uint8Array>): AsyncIterable<Uint8Array> {
  return { [Symbol.asyncIterator]: () => ({ next: () => chunks.next() }) };
}

function isDocument(text: string): boolean {
  try {
    return typeof JSON.parse(text) === "object";
  } catch {
    return false;
  }
}

async function weighText(name: string, text: string, options: WeighOptions, host: Host): Promise<ExitCode> {
  const topics = topicsIn(options.topics);
  const parsed = readInspection(text, topics);
  if (!parsed.ok) {
    if (options.json) {
      host.stdout.write(`${JSON.stringify(problemsJson(name, parsed.issues), null, 2)}\n`);
    }
    host.stderr.write(issueLines(name, parsed.issues));
    return EXIT.input;
  }
  for (const step of parsed.migrated) host.stderr.write(`${name}: written by an older version; ${step}\n`);
  host.stderr.write(judgedWithNote(name, parsed.file, topics));
  const input = withEarlier(
    assemble(parsed.file, options.probability, topics),
    await readEarlier(options.earlier, parsed.file, host),
  );
  const grounds = options.grounds !== false;
  host.stdout.write(
    options.json
      ? `${JSON.stringify({ ...weighingJson(input, grounds), ...judgedWithJson(parsed.file, topics), ...thenAndNowJson(input.thenAndNow, grounds) }, null, 2)}\n`
      : renderWeighing(input, { width: widthOf(host), all: options.all, grounds: options.grounds }),
  );
  return EXIT.done;
}
