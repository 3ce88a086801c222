import { readFileSync } from "node:fs";
import { lawBreaks } from "@good-grounds/topics/laws";
import { formatted, ownTexts, readFolder, readLibrary, type Text } from "@good-grounds/topics/texts";
import { expect, test } from "vitest";

const PAGE = readFileSync(new URL("../../docs/topics-language.md", import.meta.url), "utf8");

/** The block of the page that begins so. */
function block(begins: string): string {
  const found = [...PAGE.matchAll(/^```\n([\s\S]*?)^```$/gm)].find(([, text]) => text?.startsWith(begins));
  if (found?.[1] === undefined) throw new Error(`no block begins with "${begins}"`);
  return found[1];
}

test("the topic on the page of the language is in its one spelling and keeps the laws, but for its one example", () => {
  const text = block("topic ");
  const file = "accessories/socket-behind-stove.topic";
  expect(formatted(text, file).text).toBe(text);
  const { topics, documents, faults } = readLibrary([...ownTexts(), { file, text }]);
  expect(faults).toEqual([]);
  const topic = topics.find(({ id }) => id === "socket-behind-stove");
  const document = documents.find((one) => one.file === file);
  if (topic === undefined || document === undefined) throw new Error("not read");
  const shared = documents.filter(({ kind }) => kind === "shared");
  expect(lawBreaks(topic, document, shared).map(({ law, found }) => `${law}: ${found}`)).toEqual([
    "sources: examples: 1",
  ]);
});

test("the folder on the page of the language is read", () => {
  const texts: readonly Text[] = [
    { file: "folder.topics", text: block("folder: ") },
    { file: "views.topics", text: block("view ") },
    { file: "topics/socket-behind-stove.topic", text: block("topic ") },
  ];
  expect(readFolder(texts, ownTexts()).faults).toEqual([]);
});
