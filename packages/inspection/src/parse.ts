import type { Issue } from "@good-grounds/core";
import { accepted } from "./acceptor/accepted.ts";
import { answerIssues } from "./answers.ts";
import { bySchema } from "./by-schema.ts";
import { deeperThan } from "./depth.ts";
import { bounded, show } from "./issues.ts";
import { toToday } from "./migrations/index.ts";
import { referenceIssues } from "./references.ts";
import { membersIn, repeatedMembers } from "./repeated.ts";
import type { InspectionFile } from "./schema/file.ts";
import { FORMAT, VERSION } from "./schema/version.ts";

/** A parsed file, or everything that is wrong with it. `migrated` tells which steps brought it to today's version. */
export type Parsed =
  | { readonly ok: true; readonly file: InspectionFile; readonly migrated: readonly string[] }
  | { readonly ok: false; readonly issues: readonly Issue[] };

/** Largest text accepted, in characters. A job of 400 circuits with all readings is about 1 million. */
export const LARGEST = 32 * 1024 * 1024;

/** Levels of nesting no inspection file comes near. */
const DEEPEST = 100;

/** A shorter text does not unfold to more than can be held, however it nests, and every issue in it gets its place. */
const SHORT = 4 * 1024 * 1024;

/** Reads an inspection file from JSON text. Never throws on bad input. */
export function parseInspection(text: string): Parsed {
  if (text.length > LARGEST) {
    return refused(
      "too-large",
      `${text.length} characters`,
      `at most ${LARGEST}`,
      "photographs belong beside the file, not in it",
    );
  }
  if (text.length > SHORT && deeperThan(text, DEEPEST)) {
    return refused(
      "too-deep",
      `objects and lists more than ${DEEPEST} deep`,
      "an inspection file",
      "this is another kind of document, or a damaged one",
    );
  }
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch (error) {
    const words = error instanceof Error ? error.message : "not JSON";
    return refused(
      "not-json",
      words.slice(0, 160),
      "a JSON document",
      "check that the file is complete and was saved as JSON",
    );
  }
  const plain = plainFile(data, text);
  return plain === undefined ? read(data, () => repeatedMembers(text)) : { ok: true, file: plain, migrated: [] };
}

/**
 * The file of a text that is plainly in order, at the cost of little more than reading it: every member fits and stands in
 * its order, as many stand in the text as were read, so that no name is there twice, and all references lead somewhere.
 * Undefined where anything is not so plain; then it is read through the schema, which says what is wrong, if anything is.
 */
function plainFile(data: unknown, text: string): InspectionFile | undefined {
  const members = accepted(data);
  if (members < 0 || members !== membersIn(text)) return undefined;
  const file = data as InspectionFile;
  return referenceIssues(file).length === 0 && answerIssues(file).length === 0 ? file : undefined;
}

/** Reads an inspection file from JSON data. */
export function parseInspectionData(data: unknown): Parsed {
  return read(data, () => []);
}

/** `textIssues` gives what is wrong with the text the data came from; it is asked once it is clear what document it is. */
function read(data: unknown, textIssues: () => readonly Issue[]): Parsed {
  if (typeof data !== "object" || data === null || Array.isArray(data)) {
    return refused(
      "not-an-inspection",
      show(data),
      "an inspection file",
      "open a file that starts with its format and version",
    );
  }
  const document = data as Record<string, unknown>;
  if (document.format !== FORMAT) {
    return refused(
      "not-an-inspection",
      show(document.format),
      `"format": "${FORMAT}"`,
      "this is another kind of document",
      ["format"],
    );
  }
  const version = document.version;
  if (typeof version !== "number" || !Number.isInteger(version) || version < 1) {
    return refused("no-version", show(version), "a whole number from 1", "add the version the file was written with", [
      "version",
    ]);
  }
  if (version > VERSION) {
    return refused(
      "too-new",
      String(version),
      `version ${VERSION} or older`,
      "update this program; the file was written by a newer one",
      ["version"],
    );
  }
  const { document: current, migrated } = toToday(document);
  const { file, issues: found } = bySchema(current);
  const issues = [
    ...textIssues(),
    ...found,
    ...(file === undefined ? [] : [...referenceIssues(file), ...answerIssues(file)]),
  ];
  if (issues.length > 0 || file === undefined) return { ok: false, issues: bounded(issues) };
  return { ok: true, file, migrated };
}

function refused(code: string, found: string, expected: string, advice: string, path: Issue["path"] = []): Parsed {
  return { ok: false, issues: [{ code, path, found, expected, advice }] };
}
