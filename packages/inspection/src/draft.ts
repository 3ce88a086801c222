import type { Issue, Path } from "@good-grounds/core";
import { answerIssues } from "./answers.ts";
import { droppedMembers } from "./dropped.ts";
import { schemaIssues } from "./issues.ts";
import { leaveOut } from "./leave-out.ts";
import { toToday } from "./migrations/index.ts";
import { referenceIssues } from "./references.ts";
import { type DraftFile, draftFile } from "./schema/draft.ts";
import type { InspectionFile } from "./schema/file.ts";
import { boardCounts, type ShortLists, shortOf } from "./short-lists.ts";

/** What can be read of an unfinished or damaged document, and what had to be left out of it, each with its place. */
export interface Draft {
  readonly file: DraftFile;
  readonly left: readonly Issue[];
  /** Lists that had to go without some of their members: what is summed over them is not known. */
  readonly short: ShortLists;
}

/** Every round leaves out what stands in the way of reading; a document with more layers of damage is given up. */
const ROUNDS = 24;

/**
 * Reads an unfinished inspection as far as it goes. What is missing stays missing, and what cannot be read is left out
 * and told; nothing is filled in. Undefined where it is no document at all, or damaged beyond reading.
 */
export function readDraft(data: unknown): Draft | undefined {
  if (typeof data !== "object" || data === null || Array.isArray(data)) return undefined;
  const { document } = toToday(copyOf(data) as Record<string, unknown>);
  const left: Issue[] = [];
  const listed = boardCounts(document);
  for (let round = 0; round < ROUNDS; round += 1) {
    const parsed = draftFile.safeParse(document);
    const content = parsed.success ? contentIssues(parsed.data) : [];
    const issues = parsed.success
      ? [...droppedMembers(document, parsed.data), ...content.filter((issue) => !isNamedRcd(issue))]
      : schemaIssues(parsed.error, document);
    if (parsed.success && issues.length === 0)
      return { file: parsed.data, left: [...left, ...content], short: shortOf(document, listed) };
    const placed = issues.filter(({ path }) => path.length > 0);
    if (placed.length === 0) return undefined;
    leaveOut(
      document,
      placed.map(({ code, path }) => holderOf(code, path)),
    );
    left.push(...placed);
  }
  return undefined;
}

/** A circuit that names an RCD which cannot be found: that one is named stays, so that nobody takes it for having none. */
function isNamedRcd({ code, path }: Issue): boolean {
  return code === "unknown-reference" && path.at(-2) === "rcd" && path.at(-1) === "board";
}

/**
 * What has to go with a part that cannot be read. A reading whose instrument is not known would be taken for more exact
 * than it is; a ring short of a point would look like another ring.
 */
function holderOf(code: string, path: Path): Path {
  const ring = path.findIndex((step) => step === "crossLineNeutral" || step === "crossLineCpc");
  if (ring >= 0) return path.slice(0, ring + 1);
  return code === "unknown-reference" && path.at(-1) === "with" ? path.slice(0, -1) : path;
}

/** References and answers that cannot stand. Lists that are not there hold nothing to refer to. */
function contentIssues(draft: DraftFile): readonly Issue[] {
  const { boards = [], supply = {}, observations = [] } = draft;
  const file = {
    ...draft,
    people: draft.people ?? [],
    instruments: (draft.instruments ?? []).filter(({ id }) => id !== undefined),
    limitations: draft.limitations ?? [],
    photographs: draft.photographs ?? [],
    inspected: draft.inspected ?? [],
    signatures: draft.signatures ?? [],
    extent: { ...draft.extent, sampling: draft.extent?.sampling ?? [] },
    observations,
    supply: { ...supply, bonding: supply.bonding ?? [] },
    boards: boards.map((board) => ({
      ...board,
      fedFrom: board.fedFrom ?? "supply",
      circuits: board.circuits ?? [],
      rcds: (board.rcds ?? []).filter(({ id }) => id !== undefined),
    })),
  } as unknown as InspectionFile;
  return [...referenceIssues(file), ...answerIssues(file)];
}

/** A copy of plain data, so that what is left out is left out of nothing else. */
function copyOf(value: unknown): unknown {
  if (typeof value !== "object" || value === null) return value;
  if (Array.isArray(value)) return value.map(copyOf);
  return Object.fromEntries(Object.entries(value).map(([name, inner]) => [name, copyOf(inner)]));
}
