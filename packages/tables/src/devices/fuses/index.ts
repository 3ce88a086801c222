import type { DeviceStandard, DeviceType } from "@good-grounds/core";
import { byKey } from "../../by-key.ts";
import { BS_88_2 } from "./bs-88-2.ts";
import { BS_88_2_2 } from "./bs-88-2-2.ts";
import { BS_88_3 } from "./bs-88-3.ts";
import { BS_1361 } from "./bs-1361.ts";
import { BS_1362 } from "./bs-1362.ts";
import { BS_3036 } from "./bs-3036.ts";
import type { FuseRow } from "./fuse-row.ts";

export type { FuseRow } from "./fuse-row.ts";

/** The known points of every fuse standard, by standard. */
export const FUSES: ReadonlyMap<DeviceStandard, readonly FuseRow[]> = byKey<DeviceStandard, readonly FuseRow[]>([
  ["BS 88-2", BS_88_2],
  ["BS 88-3", BS_88_3],
  ["BS 88-2.2", BS_88_2_2],
  ["BS 88-6", BS_88_2_2],
  ["BS 1361", BS_1361],
  ["BS 1362", BS_1362],
  ["BS 3036", BS_3036],
]);

const GENERAL_PURPOSE: ReadonlySet<DeviceType | null> = new Set(["gG", null]);
const BY_BREAKING_CAPACITY: ReadonlySet<DeviceType | null> = new Set(["I", "II", null]);
const WITHOUT_TYPES: ReadonlySet<DeviceType | null> = new Set([null]);

/** Type marks the known points of a standard hold for. A gM fuse stands for a larger gG fuse than its rated current says. */
const HELD_FOR: ReadonlyMap<DeviceStandard, ReadonlySet<DeviceType | null>> = byKey<
  DeviceStandard,
  ReadonlySet<DeviceType | null>
>([
  ["BS 88-2", GENERAL_PURPOSE],
  ["BS 88-3", GENERAL_PURPOSE],
  ["BS 88-2.2", GENERAL_PURPOSE],
  ["BS 88-6", GENERAL_PURPOSE],
  ["BS 1361", BY_BREAKING_CAPACITY],
  ["BS 1362", WITHOUT_TYPES],
  ["BS 3036", WITHOUT_TYPES],
]);

const NONE: readonly FuseRow[] = Object.freeze([]);

/** The known points that hold for a fuse's marks; none where its type has a characteristic of its own. */
export function fuseRows(device: {
  readonly standard: DeviceStandard;
  readonly type: DeviceType | null;
}): readonly FuseRow[] {
  const held = HELD_FOR.get(device.standard)?.has(device.type) === true;
  return held ? (FUSES.get(device.standard) ?? NONE) : NONE;
}
