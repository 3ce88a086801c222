import type { Folder } from "../folder/read-folder.ts";
import type { LawBreak } from "./law.ts";
import { lawBreaks } from "./laws.ts";
import { sharedToldApart } from "./told-apart.ts";
import { unusedShared, type Warning, warningsOf } from "./warnings.ts";

/**
 * Every law that the topics of a folder do not keep. What more is said of a topic may raise what its own examples say:
 * those that are added have to come out, and that it has enough was seen to when it was made.
 */
export function lawsBrokenIn({ own, shared, documents, topics }: Folder): readonly LawBreak[] {
  const brought = documents.filter(({ kind }) => kind === "shared");
  const ofTopics = own.flatMap(({ topic, document, before }) => {
    if (before === undefined) return lawBreaks(topic, document, shared);
    const known = new Set(before.examples.map(({ name }) => name));
    const examples = topic.examples.filter(({ name }) => !known.has(name));
    return lawBreaks({ ...topic, examples }, document, shared).filter(({ law }) => law !== "sources");
  });
  return [...ofTopics, ...brought.flatMap((one) => sharedToldApart(one, topics.all))];
}

/** What of a folder does nothing; of a topic that was there, only what is new. */
export function warningsIn({ own, shared, documents }: Folder): readonly Warning[] {
  const ids = new Set(documents.map(({ id }) => id.text));
  return [
    ...own.flatMap(({ topic, before }) => {
      const known = new Set(before === undefined ? [] : warningsOf(before).map(({ words }) => words));
      return warningsOf(topic).filter(({ words }) => !known.has(words));
    }),
    ...unusedShared([...shared, ...own.map(({ document }) => document), ...documents]).filter((one) => ids.has(one.in)),
  ];
}
