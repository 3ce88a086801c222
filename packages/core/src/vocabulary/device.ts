/** Product standards of protective devices, current and withdrawn, as marked on the device. */
export const DEVICE_STANDARDS = [
  "BS EN 60898",
  "BS EN 61009",
  "BS EN 60947-2",
  "BS 3871",
  "BS 3036",
  "BS 1361",
  "BS 1362",
  "BS 88-2",
  "BS 88-3",
  "BS 88-2.2",
  "BS 88-6",
] as const;
export type DeviceStandard = (typeof DEVICE_STANDARDS)[number];

/** Type or utilisation category where the standard has several: B, C, D (BS EN 60898/61009), 1 to 4 (BS 3871), gG (fuses). */
export const DEVICE_TYPES = ["B", "C", "D", "1", "2", "3", "4", "gG", "gM", "I", "II"] as const;
export type DeviceType = (typeof DEVICE_TYPES)[number];

/** Product standards of residual current devices. BS 4293 and BS 7288 cover older and socket-outlet types. */
export const RCD_STANDARDS = [
  "BS EN 61008",
  "BS EN 61009",
  "BS EN 62423",
  "BS 4293",
  "BS 7288",
  "BS EN 60947-2",
] as const;
export type RcdStandard = (typeof RCD_STANDARDS)[number];

/** Residual waveform an RCD responds to. */
export const RCD_TYPES = ["AC", "A", "F", "B"] as const;
export type RcdType = (typeof RCD_TYPES)[number];

/** Operation without intentional delay, or selective (S). */
export const RCD_DELAYS = ["general", "S"] as const;
export type RcdDelay = (typeof RCD_DELAYS)[number];
