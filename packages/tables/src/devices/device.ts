import type { DeviceStandard, DeviceType } from "@good-grounds/core";

/** A device by its marks: standard, type where the standard has several, rated current in A. */
export interface MarkedDevice {
  readonly standard: DeviceStandard;
  readonly type: DeviceType | null;
  readonly rated: number;
}

/** A device in words, for a row of a table. */
export function deviceWords({ standard, type, rated }: MarkedDevice): string {
  return type === null ? `${standard}, ${rated} A` : `${standard} type ${type}, ${rated} A`;
}
