import type { EditionId } from "@good-grounds/core";
import { EDITION_2018_A2_A3 } from "./2018-a2-a3.ts";
import { EDITION_2018_A4 } from "./2018-a4.ts";
import type { Edition } from "./edition.ts";

export { CLASSIFICATION_MEANING, type ClassificationMeaning } from "./classifications.ts";
export type { Amendment, Edition } from "./edition.ts";

/** Every edition carried here. */
export const EDITION: Readonly<Record<EditionId, Edition>> = Object.freeze({
  "2018+A2+A3": EDITION_2018_A2_A3,
  "2018+A4": EDITION_2018_A4,
});

/** Editions a report may be made to on a day (ISO date); in an overlap there are two, and the report says which. */
export function editionsOn(day: string): readonly Edition[] {
  return Object.values(EDITION).filter(
    ({ published, withdrawn }) => published <= day && (withdrawn === null || day < withdrawn),
  );
}
