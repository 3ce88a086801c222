import { type DeviceStandard, type NotKnown, type Published, published, TERM } from "@good-grounds/core";
import { byKey } from "../by-key.ts";
import { notTabulated } from "../not-tabulated.ts";
import { source } from "../sources.ts";

type Answer = Published<"ampere"> | NotKnown<"ampere">;

const MARKED = source("BS 3036, BS 1361, BS 3871-1 (category marks)", "withdrawn or long-standing", "published");
const TYPICAL = source("usual rating of the standard", "none", "memory", {
  doubt: "a usual rating; what is marked on the device decides",
});

/** Breaking capacity by the category mark on the device, A. The number of a BS 3871 mark is the capacity in kA. */
const BY_CATEGORY: readonly { standard: DeviceStandard; mark: string; amperes: number }[] = Object.freeze([
  { standard: "BS 3036", mark: "S1A", amperes: 1000 },
  { standard: "BS 3036", mark: "S2A", amperes: 2000 },
  { standard: "BS 3036", mark: "S4A", amperes: 4000 },
  { standard: "BS 1361", mark: "I", amperes: 16500 },
  { standard: "BS 1361", mark: "II", amperes: 33000 },
  ...([1, 1.5, 2, 3, 4, 4.5, 5, 6, 7, 8, 9] as const).map((kiloamperes) => ({
    standard: "BS 3871" as const,
    mark: `M${kiloamperes}`,
    amperes: kiloamperes * 1000,
  })),
]);

/** Usual breaking capacity of a standard, A. */
const USUAL: readonly { standard: DeviceStandard; amperes: number }[] = Object.freeze([
  { standard: "BS 88-2", amperes: 80000 },
  { standard: "BS 88-3", amperes: 31500 },
  { standard: "BS 1362", amperes: 6000 },
]);

const CATEGORIES = byKey<string, Published<"ampere">>(
  BY_CATEGORY.map(
    ({ standard, mark, amperes }) =>
      [`${standard} ${mark}`, published(TERM.breakingCapacity, amperes, MARKED, `${standard} marked ${mark}`)] as const,
  ),
);

const TYPICALS = byKey(
  USUAL.map(
    ({ standard, amperes }) => [standard, published(TERM.breakingCapacity, amperes, TYPICAL, standard)] as const,
  ),
);

/** Breaking capacity in A of an older device by the category marked on it: S2A, type II, M6. */
export function breakingCapacityOfLegacy(standard: DeviceStandard, mark: string): Answer {
  return (
    CATEGORIES.get(`${standard} ${mark}`) ??
    notTabulated(TERM.breakingCapacity, "the table of category marks", `${standard} marked ${mark || "nothing"}`)
  );
}

/** Usual breaking capacity in A of a standard that has one, from memory. It is no substitute for what is marked. */
export function typicalBreakingCapacity(standard: DeviceStandard): Answer {
  return TYPICALS.get(standard) ?? notTabulated(TERM.breakingCapacity, "the usual ratings", standard);
}

/** By the category mark where there is one, otherwise the usual rating of the standard, A. */
export function breakingCapacityOf(standard: DeviceStandard, mark = ""): Answer {
  return mark === "" ? typicalBreakingCapacity(standard) : breakingCapacityOfLegacy(standard, mark);
}
