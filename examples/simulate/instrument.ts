import type { Chance } from "./chance.ts";

/**
 * What an instrument shows for a true value. Noise model: the error of a reading is uniform within half of the stated
 * accuracy ±(part of reading + digits), since instruments in check lie well inside their limits; then the display rounds.
 */
export class Instrument {
  readonly #chance: Chance;

  constructor(chance: Chance) {
    this.#chance = chance;
  }

  #shown(truth: number, part: number, digits: number, resolution: number): number {
    const half = 0.5 * (truth * part + digits * resolution);
    return Math.max(0, Math.round((truth + this.#chance.between(-half, half)) / resolution) * resolution);
  }

  /** Continuity, ±(2 % + 2 digits), 0.01 Ω. */
  continuity(ohms: number): string {
    return Number.isFinite(ohms) ? `${this.#shown(ohms, 0.02, 2, 0.01).toFixed(2)} Ω` : ">99.9 Ω";
  }

  /** Loop impedance, ±(5 % + 3 digits), 0.01 Ω below 100 Ω. */
  loop(ohms: number): string {
    return ohms < 100
      ? `${this.#shown(ohms, 0.05, 3, 0.01).toFixed(2)} Ω`
      : `${this.#shown(ohms, 0.05, 3, 0.1).toFixed(1)} Ω`;
  }

  /** Insulation resistance, ±(3 % + 1 digit), up to 999 MΩ. */
  insulation(ohms: number): string {
    if (ohms > 999e6) return ">999 MΩ";
    const megohms = ohms / 1e6;
    return megohms < 20
      ? `${this.#shown(megohms, 0.03, 1, 0.01).toFixed(2)} MΩ`
      : `${this.#shown(megohms, 0.03, 1, 1).toFixed(0)} MΩ`;
  }

  /** RCD operating time, ±(1 % + 1 ms), 0.1 ms. */
  rcdTime(seconds: number): string {
    return `${this.#shown(seconds * 1000, 0.01, 10, 0.1).toFixed(1)} ms`;
  }

  /** Voltage, ±(2 % + 2 digits), 1 V. */
  volts(volts: number): string {
    return `${this.#shown(volts, 0.02, 2, 1).toFixed(0)} V`;
  }

  /** Prospective fault current, ±(5 % + 3 digits), 0.01 kA. */
  faultCurrent(amperes: number): string {
    return `${this.#shown(amperes / 1000, 0.05, 3, 0.01).toFixed(2)} kA`;
  }
}

/** The accuracies the noise stays within, as the file states them. */
export const ACCURACY = Object.freeze({
  continuity: "±(2 % + 2 digits)",
  loop: "±(5 % + 3 digits)",
  electrode: "±(5 % + 3 digits)",
  "fault-current": "±(5 % + 3 digits)",
  insulation: "±(3 % + 1 digit)",
  "rcd-time": "±(1 % + 10 digits)",
  voltage: "±(2 % + 2 digits)",
});
