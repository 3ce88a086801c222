import { CHOSEN_BY, type ChosenBy } from "@good-grounds/core";
import { ChoiceCollection, LEAST_COMMON } from "@good-grounds/judgement";
import { folderWords, printable, renderChoices } from "@good-grounds/report";
import type { Topics } from "@good-grounds/topics";
import { choiceWords } from "../choice-words.ts";
import { choicesJson, type Unused } from "../choices-json.ts";
import { EXIT, type ExitCode, type Host, Stop, widthOf } from "../host.ts";
import { readInspection } from "../inspection.ts";
import { judgedWithNote } from "../judged-with.ts";
import { type Item, itemsOf } from "../many/sources.ts";
import { itemsOfInput } from "../many/standard-input.ts";
import { decode } from "../read.ts";
import { folderJson, topicsIn } from "../topics-in.ts";
import { issueLines } from "../words.ts";

export interface CompareChoicesOptions {
  readonly by: string | undefined;
  readonly json: boolean;
  /** The firm's own folder of topics and standing views. */
  readonly topics: string | undefined;
}

/** How often the progress line is drawn, in files. */
const PROGRESS_STEP = 200;

/**
 * `goodgrounds compare-choices`: where the same facts were judged differently in past inspections, and how far choices
 * agree. Files are read one at a time; a wrong one is reported and does not stop the rest.
 */
export async function compareChoicesCommand(
  paths: readonly string[],
  { by = "person", json, topics: folder }: CompareChoicesOptions,
  host: Host,
): Promise<ExitCode> {
  if (paths.length === 0)
    throw new Stop(
      EXIT.input,
      "compare-choices: no file given. Name inspection files, a folder, a .jsonl stream, or - for standard input.",
    );
  if (!isChosenBy(by))
    throw new Stop(
      EXIT.input,
      `compare-choices: --by ${JSON.stringify(by.slice(0, 40))} is not there. Write --by ${CHOSEN_BY.join(" or --by ")}.`,
    );
  const topics = topicsIn(folder);
  const collection = new ChoiceCollection();
  const unused: Unused[] = [];
  let wrong = 0;
  let read = 0;
  const items = paths.length === 1 && paths[0] === "-" ? itemsOfInput(host.stdin) : itemsOf(paths, host.stdin);
  for await (const item of items) {
    read += 1;
    const problem = take(item, collection, topics, host);
    if (problem !== undefined) {
      unused.push(problem);
      if (item.unreadable !== true) wrong += 1;
      host.stderr.write(
        problem.problem === null ? issueLines(problem.name, problem.issues) : `${printable(problem.problem)}\n`,
      );
    }
    if (host.interactive && read % PROGRESS_STEP === 0) host.stderr.write(`\r${read} read`);
  }
  if (host.interactive && read >= PROGRESS_STEP) host.stderr.write(`\r${read} read\n`);
  if (read === 0) {
    host.stderr.write("compare-choices: nothing to compare: no inspection file in what was named.\n");
    return EXIT.input;
  }
  const comparison = collection.compare(by);
  if (json)
    host.stdout.write(`${JSON.stringify({ ...choicesJson(comparison, unused), ...folderJson(topics) }, null, 2)}\n`);
  else if (comparison.count.inspections > 0) {
    const width = widthOf(host);
    if (topics.folder !== undefined) host.stdout.write(`${folderWords(topics.folder)}\n\n`);
    host.stdout.write(
      renderChoices(comparison, { width, unused: unused.length, least: LEAST_COMMON, words: choiceWords(topics) }),
    );
  }
  // Wrong input is named before what could not be read: it is what somebody has to mend.
  return wrong > 0 ? EXIT.input : unused.length > 0 ? EXIT.unreadable : EXIT.done;
}

function isChosenBy(word: string): word is ChosenBy {
  return (CHOSEN_BY as readonly string[]).includes(word);
}

/** Adds an inspection to the collection, or says why it cannot be used. */
function take(
  { name, bytes, problem }: Item,
  collection: ChoiceCollection,
  topics: Topics,
  host: Host,
): Unused | undefined {
  if (bytes === undefined) return { name, issues: [], problem: problem ?? `${name}: nothing to read` };
  let text: string;
  try {
    text = decode(bytes, name);
  } catch (error) {
    return { name, issues: [], problem: error instanceof Error ? error.message : String(error) };
  }
  const parsed = readInspection(text, topics);
  if (!parsed.ok) return { name, issues: parsed.issues, problem: null };
  host.stderr.write(judgedWithNote(name, parsed.file, topics));
  collection.add(parsed.file, name);
  return undefined;
}
