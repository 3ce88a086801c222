import { readLibrary } from "./library.ts";
import { faultText } from "./text/fault.ts";
import { ownTexts } from "./texts.js";
import type { Topic } from "./topic.ts";

let own: ReadonlyMap<string, Topic> | undefined;
let all: readonly Topic[] | undefined;

/**
 * Every topic of this package as read from its texts, when first asked for. The build puts in place of this module what it
 * says, each topic to be parsed when it is first asked for.
 */
export function ownTopics(): readonly Topic[] {
  all ??= gathered();
  return all;
}

/** The topic of this package with this id; undefined where there is none. */
export function ownTopic(id: string): Topic | undefined {
  own ??= new Map(ownTopics().map((one) => [one.id, one]));
  return own.get(id);
}

function gathered(): readonly Topic[] {
  const texts = ownTexts();
  const { topics, faults } = readLibrary(texts);
  if (faults.length > 0)
    throw new Error(
      faults.map((fault) => faultText(fault, texts.find(({ file }) => file === fault.file)?.text ?? "")).join("\n\n"),
    );
  return topics;
}
