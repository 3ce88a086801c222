import { isKnownFact } from "@good-grounds/core";
import type { RecordedProperty } from "../property.ts";

/** Whether a surge protective device is fitted in the board; each device listed there says it of itself. */
export const surgeProtection: RecordedProperty = Object.freeze({
  id: "surge-protection",
  name: "surge protection",
  values: ["fitted", "not-fitted"],
  read: ({ installation, board }: Parameters<RecordedProperty["read"]>[0]) =>
    board === undefined
      ? []
      : installation.things.at("surgeDevices", { board: board.id }).map(({ path, state: { fitted } }) => ({
          of: path,
          leaf: fitted,
          values: isKnownFact(fitted) ? [fitted.word ? "fitted" : "not-fitted"] : [],
        })),
});
