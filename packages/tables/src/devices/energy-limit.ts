import { type DeviceType, type NotKnown, type Published, published, TERM } from "@good-grounds/core";
import { byKey } from "../by-key.ts";
import { notTabulated } from "../not-tabulated.ts";
import { source } from "../sources.ts";

const WORK = "BS EN 60898-1 and BS EN 61009-1, energy limiting class 3";
const TIED =
  "a ceiling tied to the marked breaking capacity, not to the fault current of the site; the maker's curve may lie far below";
const TYPE_B = source(WORK, "2003 and later", "memory", { doubt: TIED });
const TYPE_C = source(WORK, "2003 and later", "memory", {
  doubt: `${TIED}; type C is remembered up to a tenth lower at 6 kA and 10 kA, and the greater figure is taken`,
});

/** Greatest I²t in A²s that a class 3 device may let through, by type, rating in A and marked breaking capacity in A. */
const ROWS = [
  { type: "B", upTo: 16, marked: { 3000: 15_000, 6000: 35_000, 10000: 70_000 }, source: TYPE_B },
  { type: "B", upTo: 32, marked: { 3000: 18_000, 6000: 45_000, 10000: 90_000 }, source: TYPE_B },
  { type: "C", upTo: 16, marked: { 3000: 17_000, 6000: 42_000, 10000: 84_000 }, source: TYPE_C },
  { type: "C", upTo: 32, marked: { 3000: 20_000, 6000: 55_000, 10000: 110_000 }, source: TYPE_C },
] as const;

const NODES = byKey<string, Published<"ampere-squared-second">>(
  ROWS.flatMap(({ type, upTo, marked, source: from }) =>
    Object.entries(marked).map(
      ([capacity, ceiling]) =>
        [
          `${type} ${upTo} ${capacity}`,
          published(TERM.letThrough, ceiling, from, `type ${type} up to ${upTo} A, marked ${capacity} A, class 3`),
        ] as const,
    ),
  ),
);

/**
 * The class 3 ceiling of energy let through, A²s. Other classes, type D, ratings above 32 A and other marked capacities
 * are not tabulated here.
 */
export function energyLimitCeiling(device: {
  readonly type: DeviceType | null;
  readonly rated: number;
  readonly markedBreakingCapacity: number;
  readonly energyClass: number | undefined;
}): Published<"ampere-squared-second"> | NotKnown<"ampere-squared-second"> {
  const { type, rated, markedBreakingCapacity, energyClass } = device;
  const upTo = rated <= 16 ? 16 : 32;
  const found =
    energyClass === 3 && rated > 0 && rated <= 32 ? NODES.get(`${type} ${upTo} ${markedBreakingCapacity}`) : undefined;
  if (found !== undefined) return found;
  const asked = `type ${type ?? "?"}, ${rated} A, marked ${markedBreakingCapacity} A, class ${energyClass ?? "not recorded"}`;
  return notTabulated(TERM.letThrough, "the energy limiting classes", asked);
}
