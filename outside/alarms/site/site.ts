import type { Draws } from "../draws.ts";
import type { Circuit, House } from "../house/house.ts";
import type { Care } from "./care.ts";
import type { Temperatures } from "./loop.ts";
import { Meter } from "./meter.ts";

/** A day on site: who reads what with which meter, how warm everything is, what the leads add. */
export class Site {
  readonly meter: Meter;
  readonly dead: Temperatures;
  readonly live: Temperatures;
  readonly house: House;
  readonly care: Care;
  readonly draws: Draws;
  /** What the leads add to every reading of continuity, Ω. */
  readonly leads: number;

  /** With `notNulled` the leads add that as well. */
  constructor(house: House, care: Care, draws: Draws, notNulled = 0) {
    [this.house, this.care, this.draws] = [house, care, draws];
    this.leads = draws.between("leads", -0.2, 1) * care.leads + notNulled;
    this.meter = new Meter(draws.of("meter"));
    this.dead = (of) => house.ambient + draws.between(`dead.${of}`, 0, 1 + care.warmer / 3);
    this.live = (of) => house.ambient + draws.between(`live.${of}`, 0, 1 + care.warmer);
  }

  /** A reading of continuity as it is written down. */
  continuity(ohms: number, name: string): string {
    const contact = -Math.log(1 - this.draws.part(`contact.${name}`)) * this.care.contact;
    return this.meter.ohms("continuity", Math.max(0, ohms + this.leads + contact), name);
  }

  loop(ohms: number, name: string): string {
    const contact = -Math.log(1 - this.draws.part(`contact.${name}`)) * this.care.contact;
    return this.meter.ohms("loop", ohms + contact, name);
  }

  /** The length as written, m; undefined where none is. */
  metres({ id, metres }: Circuit): number | undefined {
    const { care, draws } = this;
    if (draws.happens(`length-blank.${id}`, care.lengthBlank)) return undefined;
    const taken = metres * (1 + draws.between(`length.${id}`, -care.length, care.length));
    const step =
      care.level === 4 ? (taken > 12 ? 5 : 2) : care.level === 3 && taken > 30 ? draws.one(`step.${id}`, [1, 5]) : 1;
    return Math.max(1, Math.round(taken / step) * step);
  }

  blank(name: string): boolean {
    return this.draws.happens(`blank.${name}`, this.care.blank);
  }
}
