import { printable } from "@good-grounds/report";
import { changesOf, type TopicChange } from "@good-grounds/topics/texts";
import { EXIT, type ExitCode, type Host, Stop } from "../../host.ts";
import { faultsText, folderIn } from "../../topics-in.ts";
import type { TopicsOptions } from "./topics.ts";

/** Name and version of the JSON output. */
const OUTPUT = Object.freeze({ format: "good-grounds-topics-changed", version: 1 });

const KIND = { new: "new", more: "more is said", views: "views" } as const;

/** `topics changed FOLDER`: what a folder makes other than the topics of this program have it, with an example of each other class. */
export function changedCommand(path: string, { json }: Pick<TopicsOptions, "json">, host: Host): ExitCode {
  const { texts, folder, faults } = folderIn(path);
  if (folder === undefined) throw new Stop(EXIT.input, faultsText(path, faults, texts));
  const changes = changesOf(folder);
  const text = changes.map((one) => printableLines(changeText(one))).join("\n\n");
  host.stdout.write(
    json
      ? `${JSON.stringify({ ...OUTPUT, topics: folder.topics.folder, release: folder.release, changes }, null, 2)}\n`
      : `${text === "" ? "nothing" : text}\n`,
  );
  return EXIT.done;
}

function changeText({ topic, title, kind, words, classes }: TopicChange): string {
  return [
    `${topic}  ${title} (${KIND[kind]})`,
    ...words.map((one) => `  ${one}`),
    ...classes.flatMap(({ from, to, example }) => [
      `  ${from} becomes ${to}:`,
      ...example.map((line) => `    ${line}`),
    ]),
    ...(kind !== "new" && classes.length === 0 ? ["  no class differs"] : []),
  ].join("\n");
}

function printableLines(text: string): string {
  return text.split("\n").map(printable).join("\n");
}
