import type { Migration } from "./migration.ts";

/**
 * Version 1 had a single visit as `visitedOn` and no `inspectedOn`; version 2 has a list of visits and the date from
 * which legal periods are counted.
 */
export const v1ToV2: Migration = {
  from: 1,
  to: 2,
  what: "the single visit date became a list of visits, and the date of inspection stands by itself",
  up(document) {
    // A document that already has one of the new members is no version 1: it stays as it is, for the schema to say so.
    if ("inspectedOn" in document || "visits" in document) return { ...document, version: 2 };
    const { visitedOn, ...rest } = document;
    return { ...rest, version: 2, inspectedOn: visitedOn, visits: [{ date: visitedOn }] };
  },
};
