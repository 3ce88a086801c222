import type { DeviceStandard } from "@good-grounds/core";
import { BS_88_2 } from "./bs-88-2.ts";
import { BS_88_2_2 } from "./bs-88-2-2.ts";
import { BS_88_3 } from "./bs-88-3.ts";
import { BS_1361 } from "./bs-1361.ts";
import { BS_1362 } from "./bs-1362.ts";
import { BS_3036 } from "./bs-3036.ts";
import type { FuseRow } from "./fuse-row.ts";

export type { FuseRow } from "./fuse-row.ts";

/** The known points of every fuse standard, by standard. */
export const FUSES: ReadonlyMap<DeviceStandard, readonly FuseRow[]> = new Map<DeviceStandard, readonly FuseRow[]>([
  ["BS 88-2", BS_88_2],
  ["BS 88-3", BS_88_3],
  ["BS 88-2.2", BS_88_2_2],
  ["BS 88-6", BS_88_2_2],
  ["BS 1361", BS_1361],
  ["BS 1362", BS_1362],
  ["BS 3036", BS_3036],
]);
