import { isKnownFact } from "@good-grounds/core";
import type { RecordedProperty } from "../property.ts";

/** Whether a notice warns of each source of supply beside the network; no where it does not of one of them. */
export const otherSourceNotice: RecordedProperty = Object.freeze({
  id: "other-source-notice",
  name: "notice of the other source of supply",
  values: ["yes", "no"],
  read: ({ installation }: Parameters<RecordedProperty["read"]>[0]) => {
    const sources = installation.supply.otherSources;
    const [first] = sources;
    if (first === undefined) return [];
    const without = sources.find(({ notice }) => isKnownFact(notice) && !notice.word);
    const every = sources.every(({ notice }) => isKnownFact(notice) && notice.word);
    const { path, notice } = without ?? first;
    return [{ of: path, leaf: notice, values: without === undefined ? (every ? ["yes"] : []) : ["no"] }];
  },
});
