import type { Known, Measured } from "@good-grounds/core";
import type { Installation } from "@good-grounds/inspection";
import { Errors } from "../../uncertainty/errors.ts";
import { type InstrumentTable, instrumentTableOf } from "../../uncertainty/instruments.ts";
import { rangeOf } from "../../uncertainty/range-of-term.ts";

/** A value as its expectation and independent errors by cause, as standard deviations. Errors of the same cause add up with their signs. */
export interface Doubted {
  readonly value: number;
  readonly errors: ReadonlyMap<string, number>;
  /** 1 or −1 where the true value may be any amount higher or lower. */
  readonly open: number;
}

/** The errors of the readings of one inspection, under names that are the same in another inspection where the cause is. */
export class JobDoubt {
  readonly #errors: Errors;
  readonly #table: InstrumentTable;
  readonly #job: string;
  readonly #serials: ReadonlyMap<string, string>;

  /** `job` tells the causes of one inspection from those of another. */
  constructor(installation: Installation, job: string) {
    this.#table = instrumentTableOf(installation);
    this.#errors = new Errors(this.#table);
    this.#job = job;
    this.#serials = new Map(
      installation.instruments.flatMap(({ id, serial }) =>
        id === undefined || serial === undefined ? [] : [[id, serial.trim().toLowerCase()] as const],
      ),
    );
  }

  of(leaf: Known<"ohm"> | Known<"celsius">): Doubted {
    if (leaf.kind !== "measured") return { value: leaf.value, errors: new Map(), open: 0 };
    const { expected, causes, deviations, open } = this.#errors.ofLeaf(leaf);
    return {
      value: expected,
      errors: new Map(causes.map((cause, k) => [this.#nameOf(cause, leaf), deviations[k] as number])),
      open,
    };
  }

  /** Whether what the leads may have added to a reading follows from a record of nulling. */
  leadsRecorded({ detail }: Measured<"ohm">): boolean {
    return this.#table.leadsOf(detail.taken.instrument, detail.taken.at).recorded;
  }

  /** A name of this inspection alone. */
  own(name: string): string {
    return `${this.#job} ${name}`;
  }

  /** The gain of an instrument goes with the instrument; every other error stays with the job. */
  #nameOf(cause: number, leaf: Measured<"ohm"> | Measured<"celsius">): string {
    const { kind, instrument } = this.#errors.causes[cause] as Errors["causes"][number];
    const serial = instrument === null ? undefined : this.#serials.get(instrument);
    return kind === "gain" && serial !== undefined ? `gain ${serial} ${rangeOf(leaf.term)}` : this.own(String(cause));
  }
}

/** a·x + b·y. An open end stays open in its direction; two that pull apart are taken as `NaN`: nothing is known. */
export function combined(a: number, x: Doubted, b: number, y: Doubted): Doubted {
  const errors = new Map<string, number>();
  for (const [name, deviation] of x.errors) errors.set(name, a * deviation);
  for (const [name, deviation] of y.errors) errors.set(name, (errors.get(name) ?? 0) + b * deviation);
  const ends = [Math.sign(a) * x.open, Math.sign(b) * y.open].filter((end) => end !== 0);
  const open = ends.length === 2 && ends[0] !== ends[1] ? Number.NaN : (ends[0] ?? 0);
  return { value: a * x.value + b * y.value, errors, open };
}

/** Standard deviation of all errors together. */
export function standardOf({ errors }: Doubted): number {
  return Math.hypot(...errors.values());
}

/** Whether both readings come from one instrument, by its serial number. */
export function sameInstrument(x: Doubted, y: Doubted): boolean {
  return [...x.errors.keys()].some((name) => name.startsWith("gain ") && y.errors.has(name));
}
