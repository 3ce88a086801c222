import type { Chance } from "./chance.ts";

/** How long a step takes, in seconds, at least and at most. Walking, opening and writing down included. */
const SECONDS = {
  origin: [60, 150],
  continuity: [35, 80],
  ringPoint: [30, 70],
  insulation: [25, 50],
  loop: [45, 100],
  residual: [25, 60],
  isolate: [240, 420],
  accessories: [900, 1300],
  energise: [240, 420],
} as const;

export type Step = keyof typeof SECONDS;

/** The time of day on site: every step takes its while. */
export class Clock {
  readonly #chance: Chance;
  readonly #day: string;
  #seconds: number;

  constructor(day: string, from: string, chance: Chance) {
    const [hours = 0, minutes = 0] = from.split(":").map(Number);
    this.#chance = chance;
    this.#day = day;
    this.#seconds = hours * 3600 + minutes * 60;
  }

  /** Does a step and tells when it was finished, as local time with its offset. */
  after(step: Step): string {
    const [least, most] = SECONDS[step];
    this.#seconds += Math.round(this.#chance.between(least, most));
    const two = (n: number) => String(n).padStart(2, "0");
    const [h, m, s] = [this.#seconds / 3600, (this.#seconds / 60) % 60, this.#seconds % 60].map(Math.floor);
    return `${this.#day}T${two(h ?? 0)}:${two(m ?? 0)}:${two(s ?? 0)}${offsetOn(this.#day)}`;
  }
}

/** Offset of British time on a day: an hour ahead from the last Sunday of March to the day before that of October. */
export function offsetOn(day: string): "+00:00" | "+01:00" {
  const year = Number(day.slice(0, 4));
  return day >= lastSunday(year, 3) && day < lastSunday(year, 10) ? "+01:00" : "+00:00";
}

function lastSunday(year: number, month: number): string {
  const last = new Date(Date.UTC(year, month, 0));
  last.setUTCDate(last.getUTCDate() - last.getUTCDay());
  return last.toISOString().slice(0, 10);
}
