import { matter } from "../../terms/term.ts";

/** Whether a device could be tested at all; a device that is there and cannot be tested is not shown to work. */
export const TESTABILITIES = ["can-be-tested", "cannot-be-tested"] as const;
export type Testability = (typeof TESTABILITIES)[number];

/** Whether a device may be fed from either side, as marked; `one-way` devices have a marked supply side. */
export const DEVICE_DIRECTIONS = ["either-way", "one-way"] as const;
export type DeviceDirection = (typeof DEVICE_DIRECTIONS)[number];

/** What the built-in test of a device did. */
export const BUTTON_RESULTS = ["trips", "does-not-trip"] as const;
export type ButtonResult = (typeof BUTTON_RESULTS)[number];

/** Types of surge protective device as marked (BS EN 61643-11). */
export const SURGE_TYPES = ["1", "2", "3", "1+2", "2+3", "1+2+3"] as const;
export type SurgeType = (typeof SURGE_TYPES)[number];

/** What the indicator of a surge protective device shows. */
export const INDICATORS = ["in-order", "failed", "no-indicator"] as const;
export type Indicator = (typeof INDICATORS)[number];

/** Where a surge protective device is connected. */
export const SURGE_CONNECTIONS = ["before-main-switch", "after-main-switch", "behind-rcd"] as const;
export type SurgeConnection = (typeof SURGE_CONNECTIONS)[number];

/** What is asked about protective devices beside their ratings. */
export const DEVICE_MATTER = Object.freeze({
  testability: matter("device-testability", "whether the device could be tested"),
  direction: matter("rcd-direction", "direction in which the device may be fed"),
  backfed: matter("rcd-backfed", "a source can feed the device from its load side"),
  fitted: matter("device-fitted", "the device is fitted"),
  button: matter("device-button", "what the built-in test did"),
  indicator: matter("device-indicator", "what the indicator shows"),
  surgeType: matter("surge-type", "type of the surge protective device"),
  surgeConnection: matter("surge-connection", "where the surge protective device is connected"),
  backupStandard: matter("surge-backup-standard", "standard of the device that protects it"),
  loadKind: matter("load-kind", "kind of load"),
  loadFixed: matter("load-fixed", "the load is fixed equipment"),
});
