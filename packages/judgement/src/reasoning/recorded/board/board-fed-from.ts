import { isKnownFact } from "@good-grounds/core";
import { ofBoard } from "../of-things.ts";
import type { RecordedProperty } from "../property.ts";

/** Whether the board is fed from the supply itself, or by a circuit of another board. */
export const boardFedFrom: RecordedProperty = Object.freeze({
  id: "board-fed-from",
  name: "what the board is fed from",
  values: ["supply", "circuit"],
  read: (spoken: Parameters<RecordedProperty["read"]>[0]) =>
    ofBoard(spoken, ({ atOrigin }) => atOrigin).map(([of, leaf]) => ({
      of,
      leaf,
      values: isKnownFact(leaf) ? [leaf.word ? "supply" : "circuit"] : [],
    })),
});
