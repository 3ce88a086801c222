import { type DeviceStandard, type NotKnown, type Published, published, TERM } from "@good-grounds/core";
import { notTabulated } from "../not-tabulated.ts";
import { source } from "../sources.ts";

const MARKED = source("BS 3036, BS 1361, BS 3871-1 (category marks)", "withdrawn or long-standing", "published");
const TYPICAL = source("usual rating of the standard", "none", "memory");

/** Breaking capacity by the category mark on the device, A. */
const ROWS: readonly { standard: DeviceStandard; mark: string; amperes: number; marked: boolean }[] = [
  { standard: "BS 3036", mark: "S1A", amperes: 1000, marked: true },
  { standard: "BS 3036", mark: "S2A", amperes: 2000, marked: true },
  { standard: "BS 3036", mark: "S4A", amperes: 4000, marked: true },
  { standard: "BS 1361", mark: "I", amperes: 16500, marked: true },
  { standard: "BS 1361", mark: "II", amperes: 33000, marked: true },
  ...([1, 1.5, 3, 4.5, 6, 9] as const).map((kiloamperes) => ({
    standard: "BS 3871" as const,
    mark: `M${kiloamperes}`,
    amperes: kiloamperes * 1000,
    marked: true,
  })),
  { standard: "BS 88-2", mark: "", amperes: 80000, marked: false },
  { standard: "BS 88-3", mark: "", amperes: 31500, marked: false },
  { standard: "BS 1362", mark: "", amperes: 6000, marked: false },
];

const NODES = new Map(
  ROWS.map(({ standard, mark, amperes, marked }) => [
    `${standard} ${mark}`,
    published(
      TERM.breakingCapacity,
      amperes,
      marked ? MARKED : TYPICAL,
      mark === "" ? standard : `${standard} marked ${mark}`,
    ),
  ]),
);

/** Breaking capacity in A of a device whose label shows a category instead of a current, or of a standard with one usual rating. */
export function breakingCapacityOf(standard: DeviceStandard, mark = ""): Published<"ampere"> | NotKnown<"ampere"> {
  return (
    NODES.get(`${standard} ${mark}`) ??
    notTabulated(
      TERM.breakingCapacity,
      "the table of category marks",
      mark === "" ? standard : `${standard} marked ${mark}`,
    )
  );
}
