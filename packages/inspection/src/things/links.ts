import type { ThingKind } from "../fields/things/index.ts";
import type { ThingEntry } from "./listed.ts";

/** Members of a thing that name others, and what they name. */
export const LINKS = Object.freeze({
  between: "sections",
  enclosure: "enclosures",
  feeds: "circuits",
} satisfies Readonly<Record<string, ThingKind | "circuits">>);

export type Link = keyof typeof LINKS;

export const LINK_IDS = Object.freeze(Object.keys(LINKS) as Link[]);

/** What a thing names, by member; members that are not there are left out. */
export function linksOf(entry: ThingEntry): Readonly<Partial<Record<Link, readonly string[]>>> {
  const found: Partial<Record<Link, readonly string[]>> = {};
  for (const link of LINK_IDS) {
    const named = entry[link];
    if (named !== undefined) found[link] = Object.freeze(typeof named === "string" ? [named] : [...named]);
  }
  return Object.freeze(found);
}
