import type { Draws } from "../draws.ts";
import type { Device, ResidualDevice } from "./house.ts";
import type { Family } from "./recipes.ts";

/** The overcurrent device of a circuit on a board of the family. */
export function deviceOf(family: Family, amperes: number, feeds: boolean, draws: Draws): Device {
  switch (feeds && family === "rcbo" ? "split" : family) {
    case "split":
      return { standard: "BS EN 60898", type: breakerType(amperes, draws), amperes, kiloamperes: 6 };
    case "rcbo":
      return {
        standard: "BS EN 61009",
        type: breakerType(amperes, draws),
        amperes,
        kiloamperes: draws.one("icn", [6, 10]),
      };
    case "old-breakers":
      return { standard: "BS 3871", type: draws.one("curve", ["1", "2", "2", "3"]), amperes, kiloamperes: 6 };
    case "rewirable":
      return { standard: "BS 3036", amperes, kiloamperes: draws.one("duty", [2, 4]) };
    case "cartridge":
      return { standard: "BS 1361", type: "I", amperes, kiloamperes: 16.5 };
    case "bolted-fuses":
      return { standard: "BS 88-2.2", type: "gG", amperes, kiloamperes: 80 };
  }
}

function breakerType(amperes: number, draws: Draws): string {
  return draws.weighed("curve", [
    [amperes === 6 ? 0.8 : 0.9, "B"],
    [0.15, "C"],
    [amperes < 20 ? 0.01 : 0, "D"],
  ]);
}

/** Ω in a closed pole: a small breaker has a fine coil and heater, about 2 W at its rated current. */
export function ohmsOfPole({ standard, amperes }: Device, draws: Draws): number {
  const fuse = standard.startsWith("BS 3036") || standard.startsWith("BS 88") || standard.startsWith("BS 1361");
  const watts = (fuse ? 0.6 : 1.6) + amperes / 32;
  return (watts * draws.between("pole", 0.75, 1.15)) / amperes ** 2;
}

export function residualDevice(id: string, draws: Draws, more: Partial<ResidualDevice> = {}): ResidualDevice {
  const delay = more.delay ?? "general";
  return {
    id,
    standard: "BS EN 61008",
    type: "A",
    delay,
    milliamperes: 30,
    milliseconds: delay === "S" ? draws.between("time", 150, 320) : 12 + draws.acrossDecades("time", 6, 60),
    ...more,
  };
}
