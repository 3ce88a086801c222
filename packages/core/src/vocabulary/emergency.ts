import type { Nation } from "./premises.ts";

/**
 * Number that leads to the distributor of the place for danger on the supply side: 105 in England, Wales and Scotland.
 * It does not serve Northern Ireland; there, and where the nation is not known, there is none: the distributor's own
 * number stands at the meter or on the bill.
 */
const NUMBER: Readonly<Record<Nation, string | undefined>> = Object.freeze({
  england: "105",
  wales: "105",
  scotland: "105",
  "northern-ireland": undefined,
});

/** The number for a nation as written in a file or not yet written; undefined where none is sure. */
export function networkEmergencyNumber(nation: string | undefined): string | undefined {
  return nation !== undefined && Object.hasOwn(NUMBER, nation) ? NUMBER[nation as Nation] : undefined;
}
