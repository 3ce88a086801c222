import type { Document } from "../document/document.ts";
import { type Library, readLibrary } from "../library.ts";
import { readDocument } from "../read/document.ts";
import { readFolderText } from "../read/folder.ts";
import { readViews } from "../read/views.ts";
import { type Shared, sharedOf } from "../resolve/shared.ts";
import { sharedFaults } from "../resolve/shared-faults.ts";
import { topicOf } from "../resolve/topic.ts";
import type { Spot, TextFault } from "../text/fault.ts";
import { nearTo } from "../text/near.ts";
import type { Text } from "../texts.js";
import type { Topic } from "../topic.ts";
import { type Topics, topicsOf } from "../topics.ts";
import { hashOf, releaseOf } from "./hash.ts";
import { withMore } from "./more.ts";
import { viewFaults } from "./view-faults.ts";

/** A firm's folder as read, with what it makes of the topics of this package. */
export interface Folder {
  readonly topics: Topics;
  /** Topics that the folder brings or changes, each with the text it was read from. */
  readonly own: readonly { readonly topic: Topic; readonly document: Document; readonly before?: Topic }[];
  /** Every text read, by which shared dangers are found. */
  readonly shared: readonly Document[];
  readonly documents: readonly Document[];
  /** The release it was written against, and that of this program. */
  readonly release: { readonly written: string; readonly at: Spot; readonly here: string };
}

const FOLDER = "folder.topics";
const VIEWS = "views.topics";

/** Reads a firm's folder over the topics of this package: wholly, or with everything that is wrong and not at all. */
export function readFolder(
  texts: readonly Text[],
  ownTexts: readonly Text[],
): { readonly folder?: Folder; readonly faults: readonly TextFault[] } {
  const here = releaseOf(ownTexts);
  const textOf = (file: string) => texts.find((one) => one.file === file)?.text;
  const head = readFolderText(textOf(FOLDER) ?? "", FOLDER, here);
  const { views, faults: ofViews } = readViews(textOf(VIEWS) ?? "", VIEWS);
  const read = texts.filter(({ file }) => isTopicText(file)).map(({ file, text }) => readDocument(text, file));
  const documents = read.flatMap(({ document }) => (document === undefined ? [] : [document]));
  const library = readLibrary(ownTexts);
  const made = overOwn(documents, library);
  const faults = [
    ...misplaced(texts, documents),
    ...head.faults,
    ...ofViews,
    ...read.flatMap((one) => one.faults),
    ...made.faults,
    ...misnamed(documents),
  ];
  const broken = [...faults, ...(faults.length > 0 ? [] : viewFaults(views, made.topics, VIEWS))];
  if (broken.length > 0 || head.folder === undefined) return { faults: broken };
  const label = { name: head.folder.name, answersFor: head.folder.answersFor, hash: hashOf(texts) };
  const standing = views.map(({ point, topic, position, since, by, because }) => ({
    point: point.text,
    ...(topic === undefined ? {} : { topic: topic.text }),
    position: position.text,
    since: since.text,
    by,
    because,
  }));
  return {
    folder: {
      topics: topicsOf(made.topics, { views: standing, folder: label }),
      own: made.own,
      shared: made.sharedTexts,
      documents,
      release: { written: head.folder.release.text, at: head.folder.release.at, here },
    },
    faults: [],
  };
}

function isTopicText(file: string): boolean {
  return /^(?:shared|topics)\/.+\.topic$/.test(file);
}

/** Texts that stand where none of their kind is read. */
function misplaced(texts: readonly Text[], documents: readonly Document[]): readonly TextFault[] {
  const fault = (file: string, found: string, expected: string): TextFault => ({
    file,
    at: { line: 1, from: 1, to: 2 },
    found,
    expected,
    advice: "move it, or name it otherwise",
    within: [],
  });
  return [
    ...texts
      .filter(({ file }) => !isTopicText(file) && file !== FOLDER && file !== VIEWS)
      .map(({ file }) =>
        fault(file, "a text that is not read here", `${FOLDER}, ${VIEWS}, shared/*.topic, topics/*.topic`),
      ),
    ...documents
      .filter(({ file, kind }) => (kind === "shared") !== file.startsWith("shared/"))
      .map(({ file, kind }) =>
        fault(
          file,
          kind === "shared" ? "a shared text" : "a topic",
          kind === "shared" ? "it in shared/" : "it in topics/",
        ),
      ),
  ];
}

/** Topics and shared pages whose file has another name than they have; what is more of a topic may be called as one likes. */
function misnamed(documents: readonly Document[]): readonly TextFault[] {
  return documents.flatMap(({ file, kind, id }) => {
    const name = file.slice(file.lastIndexOf("/") + 1, -".topic".length);
    if (kind === "more" || name === id.text) return [];
    return [
      {
        file,
        at: id.at,
        found: `"${id.text}" in a file called "${name}.topic"`,
        expected: `a file called "${id.text}.topic"`,
        advice: `call the file "${id.text}.topic", or write "${kind} ${name}:"`,
        within: [],
      },
    ];
  });
}

/** The topics of this package with those of the folder, and with what it adds. */
function overOwn(documents: readonly Document[], library: Library) {
  const sharedTexts = [...library.documents, ...documents].filter(({ kind }) => kind === "shared");
  const { shared, faults: clashes } = sharedOf(sharedTexts);
  const ids = new Map(library.topics.map((one) => [one.id, one]));
  const brought = documents.filter(({ kind }) => kind === "topic");
  const added = documents.filter(({ kind }) => kind === "more");
  const again = new Map<string, Document>();
  for (const document of library.documents) {
    if (document.kind !== "topic") continue;
    const more = added.filter(({ id }) => id.text === document.id.text);
    const merged = more.length === 0 ? document : withMore(document, more);
    if (more.length > 0 || hearsOf(merged, library.shared, shared)) again.set(document.id.text, merged);
  }
  const made = [...again.values(), ...brought].map((document) => ({
    document,
    ...topicOf(document, again.has(document.id.text) ? seenFrom(document, library.shared, shared, added) : shared),
  }));
  const own = made.flatMap(({ document, topic }) => {
    const before = ids.get(document.id.text);
    return topic === undefined ? [] : [{ topic, document, ...(before === undefined ? {} : { before }) }];
  });
  const now = new Map(own.map(({ topic }) => [topic.id, topic]));
  const topics = [
    ...library.topics.map((one) => now.get(one.id) ?? one),
    ...own.filter(({ before }) => before === undefined).map(({ topic }) => topic),
  ];
  const faults = [
    ...clashes,
    ...documents.filter(({ kind }) => kind === "shared").flatMap((one) => sharedFaults(one, shared)),
    ...made.flatMap((one) => one.faults),
    ...takenIds(brought, ids),
    ...added.flatMap((one) => (ids.has(one.id.text) ? [] : [noSuchTopic(one, [...ids.keys()])])),
  ];
  return { topics, own, faults, sharedTexts };
}

/** What is shared as one of our own topics sees it: names of the folder only where what is added to it uses them. */
function seenFrom({ id, statements }: Document, ours: Shared, all: Shared, added: readonly Document[]): Shared {
  const used = new Set(
    added.filter((one) => one.id.text === id.text).flatMap(({ uses }) => uses.map(({ text }) => text)),
  );
  if (used.size > 0) {
    const local = new Set(
      statements.flatMap((one) => ("name" in one && typeof one.name === "object" ? [one.name.text] : [])),
    );
    const kept = <T>(map: ReadonlyMap<string, T>, before: ReadonlyMap<string, T>) =>
      new Map([...map].filter(([name]) => before.has(name) || used.has(name) || !local.has(name)));
    return {
      facts: kept(all.facts, ours.facts),
      states: kept(all.states, ours.states),
      points: kept(all.points, ours.points),
      everywhere: all.everywhere,
    };
  }
  return { ...ours, everywhere: all.everywhere };
}

/** Whether a danger or contradiction of the folder speaks of what the topic asks. */
function hearsOf(document: Document, ours: Shared, all: Shared): boolean {
  if (all.everywhere.length === ours.everywhere.length) return false;
  const count = (shared: Shared) => {
    const { topic } = topicOf(document, shared);
    return (topic?.dangers?.length ?? 0) + (topic?.contradictions?.length ?? 0);
  };
  return count({ ...ours, everywhere: all.everywhere }) !== count(ours);
}

function takenIds(brought: readonly Document[], ids: ReadonlyMap<string, Topic>): readonly TextFault[] {
  const seen = new Set<string>();
  return brought.flatMap(({ id, file }) => {
    const isOurs = ids.has(id.text);
    const isTwice = seen.has(id.text);
    seen.add(id.text);
    if (!isOurs && !isTwice) return [];
    return [
      {
        file,
        at: id.at,
        found: `"${id.text}" is the id of ${isOurs ? "a topic there already" : "another topic of the folder"}`,
        expected: "an id of its own for each topic",
        advice: isOurs
          ? `write "more ${id.text}" to add to it, or name yours otherwise`
          : "name one of the two otherwise",
        within: [],
      },
    ];
  });
}

function noSuchTopic({ id, file }: Document, ids: readonly string[]): TextFault {
  const [near] = nearTo(id.text, ids);
  return {
    file,
    at: id.at,
    found: `no topic is called "${id.text}"`,
    expected: "the id of a topic that more is said of",
    advice: near === undefined ? "`goodgrounds reason --list` shows the topics" : `is it "${near}"?`,
    within: [],
  };
}
