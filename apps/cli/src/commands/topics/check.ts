import { join } from "node:path";
import { namesKnown } from "@good-grounds/judgement";
import { printable } from "@good-grounds/report";
import { breakLines, checkFolder, type FolderChecked, LAWS, type Warning } from "@good-grounds/topics/laws";
import { changesOf, type Folder, type Text } from "@good-grounds/topics/texts";
import { EXIT, type ExitCode, type Host } from "../../host.ts";
import { faultsText, folderIn } from "../../topics-in.ts";
import type { TopicsOptions } from "./topics.ts";

/** Name and version of the JSON output. */
const OUTPUT = Object.freeze({ format: "good-grounds-topics-check", version: 1 });

/**
 * `topics check FOLDER`: whether a firm's folder can be read and keeps every law. One line where all is well, and a second
 * one where it was written against another release: the laws were tried with the topics that are here, so that is no fault.
 */
export function checkCommand(path: string, { all, json }: TopicsOptions, host: Host): ExitCode {
  const { texts, folder, faults } = folderIn(path);
  const made =
    folder === undefined ? { faults, broken: [], warnings: [], files: new Map() } : checkFolder(folder, namesKnown());
  const isWell = folder !== undefined && made.faults.length === 0 && made.broken.length === 0;
  if (json) host.stdout.write(`${JSON.stringify(checkJson(folder, made, isWell), null, 2)}\n`);
  else if (!isWell) host.stderr.write(`${problems(path, texts, made)}\n`);
  else host.stdout.write(wellText(path, folder, made.warnings, all));
  return isWell ? EXIT.done : EXIT.input;
}

function problems(path: string, texts: readonly Text[], { faults, broken, files }: FolderChecked): string {
  const count = faults.length + broken.length;
  return [
    ...(faults.length === 0 ? [] : [faultsText(path, faults, texts)]),
    ...broken.map((one) =>
      breakLines(one, files, (file) => join(path, file))
        .map(printable)
        .join("\n"),
    ),
    `${path}: ${count} ${count === 1 ? "problem" : "problems"}`,
  ].join("\n\n");
}

function wellText(path: string, folder: Folder, warnings: readonly Warning[], all: boolean): string {
  const { own, topics } = folder;
  const brought = own.filter(({ before }) => before === undefined).length;
  const counts = [
    `${brought} ${brought === 1 ? "topic" : "topics"}`,
    `${own.length - brought} changed`,
    `${topics.views.length} ${topics.views.length === 1 ? "view" : "views"}`,
    `${Object.keys(LAWS).length} laws`,
    ...(warnings.length === 0
      ? []
      : [`${warnings.length} ${warnings.length === 1 ? "warning" : "warnings"}${all ? "" : " (--all)"}`]),
  ];
  const listed = all ? warnings.map(({ in: where, words }) => `  ${where}: ${words}\n`).join("") : "";
  const well = `${printable(`${topics.folder?.name} ${topics.folder?.hash.slice(0, 12)}`)}: well (${counts.join(", ")})\n`;
  return `${well}${otherRelease(path, folder)}${listed}`;
}

/** What to do where the folder was last looked over beside other topics than those that are here. */
function otherRelease(path: string, { release: { written, here } }: Folder): string {
  if (written === here) return "";
  return `written against release ${written}, and this is ${here}: look at "topics changed ${printable(path)}", then write "release ${here}" in folder.topics\n`;
}

function checkJson(folder: Folder | undefined, { faults, broken, warnings }: FolderChecked, isWell: boolean): object {
  return {
    ...OUTPUT,
    well: isWell,
    topics: folder?.topics.folder ?? null,
    release: folder?.release ?? null,
    laws: LAWS,
    changed: folder === undefined ? [] : changesOf(folder).map(({ topic, kind }) => ({ topic, kind })),
    faults,
    broken,
    warnings,
  };
}
