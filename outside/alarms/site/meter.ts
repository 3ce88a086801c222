import type { Draws } from "../draws.ts";

type Function = "continuity" | "loop" | "insulation" | "rcd-time" | "voltage" | "electrode";

interface Accuracy {
  readonly percent: number;
  readonly digits: number;
}

interface Make {
  readonly accuracy: Readonly<Record<Function, Accuracy>>;
  /** Where the insulation range ends, MΩ. */
  readonly insulationEnd: number;
  /** Whether the prospective current is worked out from the nominal voltage. */
  readonly nominal: boolean;
}

const say = (percent: number, digits: number): Accuracy => ({ percent, digits });

/** Instruments as they are sold; no one of them is any maker's. */
const MAKES: readonly Make[] = [
  {
    accuracy: {
      continuity: say(2, 2),
      loop: say(5, 3),
      insulation: say(3, 2),
      "rcd-time": say(1, 10),
      voltage: say(2, 2),
      electrode: say(2, 3),
    },
    insulationEnd: 999,
    nominal: true,
  },
  {
    accuracy: {
      continuity: say(3, 2),
      loop: say(5, 5),
      insulation: say(3, 3),
      "rcd-time": say(2, 10),
      voltage: say(2, 2),
      electrode: say(5, 3),
    },
    insulationEnd: 200,
    nominal: false,
  },
  {
    accuracy: {
      continuity: say(1.5, 3),
      loop: say(4, 4),
      insulation: say(5, 2),
      "rcd-time": say(1, 10),
      voltage: say(1, 2),
      electrode: say(3, 3),
    },
    insulationEnd: 500,
    nominal: true,
  },
];

/** One instrument with its own errors, each within what its maker states. */
export class Meter {
  readonly make: Make;
  readonly #draws: Draws;

  constructor(draws: Draws) {
    this.#draws = draws;
    this.make = draws.one("make", MAKES);
  }

  accuracyText(of: Function): string {
    const { percent, digits } = this.make.accuracy[of];
    return `±(${percent} % + ${digits} digits)`;
  }

  /** What it takes a value for: its scale is off by as much all day, its zero a little, and each reading jitters. */
  #taken(of: Function, value: number, digit: number, reading: string): number {
    const { percent, digits } = this.make.accuracy[of];
    const scale = this.#draws.bell(`${of}.scale`, percent / 200, 2);
    // Half a digit is left for the rounding of the display.
    const zero = this.#draws.between(`${of}.zero`, -0.5, 0.5) * (digits - 0.5);
    const jitter = this.#draws.between(`${of}.${reading}`, -0.5, 0.5) * (digits - 0.5);
    return Math.max(0, value * (1 + scale) + (zero + jitter) * digit);
  }

  /** Ω as the display shows it; the end of the range is told as such. */
  ohms(of: "continuity" | "loop" | "electrode", value: number, reading: string): string {
    const end = of === "continuity" ? 99.9 : 1999;
    if (value > end) return `>${end} Ω`;
    const decimals = value < 9.995 ? 2 : value < 99.95 ? 1 : 0;
    return `${this.#taken(of, value, 10 ** -decimals, reading).toFixed(decimals)} Ω`;
  }

  megohms(value: number, reading: string): string {
    const { insulationEnd } = this.make;
    const decimals = value < 9.995 ? 2 : value < 99.95 ? 1 : 0;
    const taken = this.#taken("insulation", value, 10 ** -decimals, reading);
    return taken > insulationEnd ? `>${insulationEnd} MΩ` : `${taken.toFixed(decimals)} MΩ`;
  }

  /** The prospective current that it works out from a loop as it takes it for. */
  current(loop: number, volts: number, reading: string): string {
    const taken = Math.max(0.01, this.#taken("loop", loop, 0.01, reading));
    const amperes = (this.make.nominal ? 230 : volts) / taken;
    return amperes < 1000 ? `${amperes.toFixed(0)} A` : `${(amperes / 1000).toFixed(2)} kA`;
  }

  volts(value: number): string {
    return `${this.#taken("voltage", value, 0.1, "supply").toFixed(0)} V`;
  }

  milliseconds(value: number, reading: string): string {
    if (value > 1999) return ">1999 ms";
    return `${this.#taken("rcd-time", value, 0.1, reading).toFixed(1)} ms`;
  }
}
