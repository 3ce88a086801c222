import type { Document } from "./document/document.ts";
import { readDocument } from "./read/document.ts";
import { type Shared, sharedOf } from "./resolve/shared.ts";
import { sharedFaults } from "./resolve/shared-faults.ts";
import { topicOf } from "./resolve/topic.ts";
import type { TextFault } from "./text/fault.ts";
import type { Text } from "./texts.js";
import { TOPIC_GROUPS, type Topic } from "./topic.ts";

/** What a set of texts says. Everything that is wrong with any of them is in `faults`. */
export interface Library {
  readonly topics: readonly Topic[];
  readonly documents: readonly Document[];
  readonly shared: Shared;
  readonly faults: readonly TextFault[];
}

/** Reads topics and the texts they share; topics in the order of a walk from the origin outwards, then by their place. */
export function readLibrary(texts: readonly Text[]): Library {
  const read = texts.map(({ file, text }) => readDocument(text, file));
  const documents = read.flatMap(({ document }) => (document === undefined ? [] : [document]));
  const { shared, faults: clashes } = sharedOf(documents.filter(({ kind }) => kind === "shared"));
  const made = inWalk(documents).map((document) => topicOf(document, shared));
  const topics = made.flatMap(({ topic }) => (topic === undefined ? [] : [topic]));
  const faults = [
    ...read.flatMap((one) => one.faults),
    ...clashes,
    ...documents.filter(({ kind }) => kind === "shared").flatMap((document) => sharedFaults(document, shared)),
    ...made.flatMap((one) => one.faults),
    ...twice(documents),
  ];
  return { topics: inOrder(topics), documents, shared, faults };
}

/** Topics by their place in the walk, then in the order of the texts. */
function inWalk(documents: readonly Document[]): readonly Document[] {
  const last = Number.POSITIVE_INFINITY;
  return documents
    .filter(({ kind }) => kind === "topic")
    .sort((a, b) => ((a.place ?? last) === (b.place ?? last) ? 0 : (a.place ?? last) - (b.place ?? last)));
}

function inOrder(topics: readonly Topic[]): readonly Topic[] {
  return TOPIC_GROUPS.flatMap((group) => topics.filter((topic) => topic.group === group));
}

/** Topics that go by the same id. */
function twice(documents: readonly Document[]): readonly TextFault[] {
  const first = new Map<string, Document>();
  return documents.flatMap((document) => {
    const { kind, id, file } = document;
    const before = kind === "topic" ? first.get(id.text) : undefined;
    if (before === undefined) {
      if (kind === "topic") first.set(id.text, document);
      return [];
    }
    return [
      {
        file,
        at: id.at,
        found: `"${id.text}" is the id of the topic in ${before.file} as well`,
        expected: "an id of its own for each topic",
        advice: "name one of the two otherwise",
        within: [],
      },
    ];
  });
}
