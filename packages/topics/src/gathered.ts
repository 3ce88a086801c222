import { readLibrary } from "./library.ts";
import { faultText } from "./text/fault.ts";
import { ownTexts } from "./texts.js";
import type { Topic } from "./topic.ts";

/** Every topic of this package as read from its texts. The build puts in place of this module what it says. */
export const TOPICS: readonly Topic[] = gathered();

function gathered(): readonly Topic[] {
  const texts = ownTexts();
  const { topics, faults } = readLibrary(texts);
  if (faults.length > 0)
    throw new Error(
      faults.map((fault) => faultText(fault, texts.find(({ file }) => file === fault.file)?.text ?? "")).join("\n\n"),
    );
  return topics;
}
