import { type DeviceType, type NotKnown, type Published, published, TERM } from "@good-grounds/core";
import { notTabulated } from "../not-tabulated.ts";
import { source } from "../sources.ts";

const CLASS_3 = source("BS EN 60898-1 and BS EN 61009-1, energy limiting class 3", "2003 and later", "memory", {
  doubt:
    "a ceiling tied to the marked breaking capacity, not to the fault current of the site; the maker's curve may lie far below",
});

/** Greatest I²t in A²s that a class 3 device may let through, by type, rating and marked breaking capacity in A. */
const ROWS = [
  { type: "B", upTo: 16, marked: { 3000: 15_000, 6000: 35_000, 10000: 70_000 } },
  { type: "B", upTo: 32, marked: { 3000: 18_000, 6000: 45_000, 10000: 90_000 } },
  { type: "C", upTo: 16, marked: { 3000: 17_000, 6000: 42_000, 10000: 84_000 } },
  { type: "C", upTo: 32, marked: { 3000: 20_000, 6000: 55_000, 10000: 110_000 } },
] as const;

const NODES: ReadonlyMap<string, Published<"ampere-squared-second">> = new Map(
  ROWS.flatMap(({ type, upTo, marked }) =>
    Object.entries(marked).map(
      ([capacity, ceiling]) =>
        [
          `${type} ${upTo} ${capacity}`,
          published(TERM.letThrough, ceiling, CLASS_3, `type ${type} up to ${upTo} A, marked ${capacity} A, class 3`),
        ] as const,
    ),
  ),
);

/** The class 3 ceiling of energy let through; other classes, types D and ratings above 32 A are not tabulated here. */
export function energyLimitCeiling(device: {
  readonly type: DeviceType | null;
  readonly rated: number;
  readonly markedBreakingCapacity: number;
  readonly energyClass: number | undefined;
}): Published<"ampere-squared-second"> | NotKnown<"ampere-squared-second"> {
  const { type, rated, markedBreakingCapacity, energyClass } = device;
  const upTo = rated <= 16 ? 16 : Math.max(rated, 32);
  const found = energyClass === 3 ? NODES.get(`${type} ${upTo} ${markedBreakingCapacity}`) : undefined;
  if (found !== undefined) return found;
  const asked = `type ${type ?? "?"}, ${rated} A, marked ${markedBreakingCapacity} A, class ${energyClass ?? "not recorded"}`;
  return notTabulated(TERM.letThrough, "the energy limiting classes", asked);
}
