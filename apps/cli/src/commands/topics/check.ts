import { join } from "node:path";
import { namesKnown } from "@good-grounds/judgement";
import { printable } from "@good-grounds/report";
import { LAWS, type LawBreak, lawsBrokenIn, namesUnknown, type Warning, warningsIn } from "@good-grounds/topics/laws";
import { changesOf, type Folder, type Text, type TextFault } from "@good-grounds/topics/texts";
import { EXIT, type ExitCode, type Host } from "../../host.ts";
import { faultsText, folderIn } from "../../topics-in.ts";
import type { TopicsOptions } from "./topics.ts";

/** Name and version of the JSON output. */
const OUTPUT = Object.freeze({ format: "good-grounds-topics-check", version: 1 });

interface Checked {
  readonly faults: readonly TextFault[];
  readonly broken: readonly LawBreak[];
  readonly warnings: readonly Warning[];
  /** The text that each topic or shared page of the folder was read from. */
  readonly files: ReadonlyMap<string, string>;
}

/** `topics check FOLDER`: whether a firm's folder can be read and keeps every law. One line where all is well. */
export function checkCommand(path: string, { all, json }: TopicsOptions, host: Host): ExitCode {
  const { texts, folder, faults } = folderIn(path);
  const made = folder === undefined ? { faults, broken: [], warnings: [], files: new Map() } : checked(folder);
  const isWell = folder !== undefined && made.faults.length === 0 && made.broken.length === 0;
  if (json) host.stdout.write(`${JSON.stringify(checkJson(folder, made, isWell), null, 2)}\n`);
  else if (!isWell) host.stderr.write(`${problems(path, texts, made)}\n`);
  else host.stdout.write(wellText(folder, made.warnings, all));
  return isWell ? EXIT.done : EXIT.input;
}

function checked(folder: Folder): Checked {
  const known = namesKnown();
  return {
    files: new Map(folder.documents.map(({ id, file }) => [id.text, file])),
    faults: [...releaseUnknown(folder), ...folder.documents.flatMap((document) => namesUnknown(document, known))],
    broken: lawsBrokenIn(folder),
    warnings: warningsIn(folder),
  };
}

/** A folder names the release it was checked with; another one says nothing of the topics that are here. */
function releaseUnknown({ release: { written, at, here } }: Folder): readonly TextFault[] {
  if (written === here) return [];
  return [
    {
      file: "folder.topics",
      at,
      found: `release ${written}, which is not that of this program`,
      expected: `"release ${here}"`,
      advice: `see what is different with "topics changed", then write "release ${here}"`,
      within: [],
    },
  ];
}

function problems(path: string, texts: readonly Text[], { faults, broken, files }: Checked): string {
  const count = faults.length + broken.length;
  return [
    ...(faults.length === 0 ? [] : [faultsText(path, faults, texts)]),
    ...broken.map((one) => breakText(path, one, files)),
    `${path}: ${count} ${count === 1 ? "problem" : "problems"}`,
  ].join("\n\n");
}

/** Where in a folder a law is not kept: text, line and column. */
function placeOf(path: string, { topic, at }: LawBreak, files: ReadonlyMap<string, string>): string {
  const file = at?.file ?? files.get(topic);
  return at === undefined || file === undefined ? topic : `${join(path, file)}:${at.line}:${at.from}`;
}

function breakText(path: string, one: LawBreak, files: ReadonlyMap<string, string>): string {
  const { law, found, expected, example = [], decided = [] } = one;
  const place = placeOf(path, one, files);
  const block = (head: string, lines: readonly string[]) =>
    lines.length === 0 ? [] : [`  ${head}`, ...lines.map((line) => `    ${line}`)];
  return [
    `${place}  ${found}`,
    `  law ${law}: ${LAWS[law as keyof typeof LAWS] ?? ""}`,
    `  expected: ${expected}`,
    ...block("what decided:", decided),
    ...block("an example that shows it, to be pasted:", example),
  ]
    .map(printable)
    .join("\n");
}

function wellText(folder: Folder, warnings: readonly Warning[], all: boolean): string {
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
  return `${printable(`${topics.folder?.name} ${topics.folder?.hash.slice(0, 12)}`)}: well (${counts.join(", ")})\n${listed}`;
}

function checkJson(folder: Folder | undefined, { faults, broken, warnings }: Checked, isWell: boolean): object {
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
