import type { Circuit, Device, House } from "./house.ts";

/** Multiples of the rated current at which every breaker of a type opens at once. */
const AT_ONCE: Readonly<Record<string, number>> = { B: 5, C: 10, D: 20, 1: 4, 2: 7, 3: 10 };

/** A that opens a fuse within 0.4 s and within 5 s, read off the time-current curves of the standards. */
const FUSES: Readonly<Record<string, Readonly<Record<number, readonly [quick: number, slow: number]>>>> = {
  "BS 3036": { 5: [24, 13], 15: [90, 43], 20: [130, 60], 30: [210, 87], 45: [400, 145] },
  "BS 1361": { 5: [22, 14], 15: [70, 46], 20: [135, 82], 30: [200, 125], 45: [400, 240] },
  "BS 88-2.2": {
    6: [28, 17],
    10: [47, 31],
    16: [90, 55],
    20: [130, 79],
    25: [160, 100],
    32: [220, 125],
    40: [292, 170],
  },
};

/** The current at which a device is sure to open within the time, A. */
function opensAt({ standard, type, amperes }: Device, seconds: 0.4 | 5): number {
  const fuse = FUSES[standard]?.[amperes];
  if (fuse !== undefined) return fuse[seconds === 0.4 ? 0 : 1];
  const times = AT_ONCE[type ?? ""];
  if (times === undefined) throw new Error(`nothing is known of ${standard} ${type ?? ""} ${amperes} A`);
  // Its thermal part opens a breaker of type D within 5 s at half the current that opens it at once.
  return times * amperes * (type === "D" && seconds === 5 ? 0.5 : 1);
}

/** The time in which a circuit on a TN supply has to be disconnected, s. */
function permittedSeconds({ shape, sockets, device }: Circuit): 0.4 | 5 {
  if (shape === "distribution") return 5;
  return device.amperes <= (sockets ? 63 : 32) ? 0.4 : 5;
}

/** The greatest loop impedance at which the overcurrent device opens in time at the lowest voltage, Ω. */
export function permittedLoop(circuit: Circuit): number {
  return (230 * 0.95) / opensAt(circuit.device, permittedSeconds(circuit));
}

/** mV/A/m of two copper cores at 70 °C, and at 90 °C for thermosetting insulation. */
const DROP: Readonly<Record<number, readonly [at70: number, at90: number]>> = {
  1: [44, 46],
  1.5: [29, 31],
  2.5: [18, 19],
  4: [11, 12],
  6: [7.3, 7.9],
  10: [4.4, 4.7],
  16: [2.8, 2.9],
};

/** Greatest length at which a circuit keeps to 3 % (lighting) or 5 % at what it carries, m. */
export function longestByDrop({ load, shape, cable, amperes }: Omit<Circuit, "metres">): number {
  const [at70, at90] = DROP[cable.line] ?? [Number.NaN, Number.NaN];
  const drop = (cable.insulation === "90C-thermosetting" ? at90 : at70) / 1000;
  const permitted = 230 * (load === "lighting" ? 0.03 : 0.05);
  return ((shape === "ring" ? 4 : 1) * permitted) / (amperes * drop);
}

/** The greatest external impedance that distributors declare, Ω. */
export function permittedExternal({ earthing }: Pick<House, "earthing">): number {
  return earthing === "TN-C-S" ? 0.35 : earthing === "TN-S" ? 0.8 : 200;
}

/** What two cores of a flat cable carry clipped to a surface, and in the other ways of the recipes, A. */
const CARRIES: Readonly<Record<string, Readonly<Record<number, number>>>> = {
  C: { 1: 16, 1.5: 20, 2.5: 27, 4: 37, 6: 47, 10: 64, 16: 85 },
  B: { 1: 13.5, 1.5: 17.5, 2.5: 24, 4: 32, 6: 41, 10: 57, 16: 76 },
  "100": { 1: 13, 1.5: 16, 2.5: 21, 4: 27, 6: 34, 10: 45, 16: 57 },
  "102": { 1: 13, 1.5: 16, 2.5: 21, 4: 27, 6: 35, 10: 47, 16: 63 },
};

/** Whether the cable carries what its device lets through for long; a semi-enclosed fuse counts for more. */
export function carries({ cable, device, shape }: Pick<Circuit, "cable" | "device" | "shape">): boolean {
  const least = Math.min(...cable.methods.map((method) => CARRIES[method]?.[cable.line] ?? Number.NaN));
  if (shape === "ring") return device.amperes <= 32 && least >= 20;
  return least >= device.amperes / (device.standard === "BS 3036" ? 0.725 : 1);
}
