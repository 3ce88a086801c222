import type { Migration } from "./migration.ts";

type Document = Readonly<Record<string, unknown>>;

/**
 * Version 2 said of a board whether surge protection is fitted; version 3 lists surge protective devices among the things,
 * one that was looked for and is not there as not fitted. What was not known stays so, with its reason.
 */
export const v2ToV3: Migration = {
  from: 2,
  to: 3,
  what: "surge protection of a board became a device among the things of the installation",
  up(document) {
    const { boards, things, ...rest } = document;
    if (!Array.isArray(boards)) return { ...document, version: 3 };
    const moved = boards.flatMap((board: unknown, i) => surgeDevice(board, i));
    if (moved.length === 0) return { ...document, version: 3 };
    const lists = isObject(things) ? things : {};
    const listed = Array.isArray(lists.surgeDevices) ? lists.surgeDevices : [];
    return {
      ...rest,
      version: 3,
      boards: boards.map(withoutSurge),
      things: { ...lists, surgeDevices: [...listed, ...moved] },
    };
  },
};

/** The id of the device that stood at the board of this number: short whatever the board is called. */
export function migratedSurgeId(board: number): string {
  return `surge-${board + 1}`;
}

function surgeDevice(board: unknown, number: number): readonly Document[] {
  if (!isObject(board) || !Object.hasOwn(board, "surgeProtection")) return [];
  const { id, surgeProtection: said } = board;
  const fitted = said === "fitted" ? true : said === "not-fitted" ? false : said;
  return [{ id: migratedSurgeId(number), board: id, fitted }];
}

function withoutSurge(board: unknown): unknown {
  if (!isObject(board)) return board;
  const { surgeProtection: _, ...rest } = board;
  return rest;
}

function isObject(value: unknown): value is Document {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}
