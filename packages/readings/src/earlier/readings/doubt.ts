import type { Known, Measured } from "@good-grounds/core";
import type { Installation } from "@good-grounds/inspection";
import { type Doubted, doubtedReading, exactly, type JobCauses } from "@good-grounds/measurement";

/** The errors of the readings of one inspection, by causes that are the same in another inspection where they are. */
export class JobDoubt {
  readonly #job: JobCauses;

  /** `id` tells the causes of one inspection from those of another. */
  constructor(installation: Installation, id: string) {
    const serials = new Map(
      installation.instruments.flatMap(({ id: name, serial }) =>
        name === undefined || serial === undefined ? [] : [[name, serial.trim().toLowerCase()] as const],
      ),
    );
    this.#job = { id, serialOf: (instrument) => serials.get(instrument) };
  }

  of(leaf: Known<"ohm"> | Known<"celsius">): Doubted {
    return leaf.kind === "measured" ? doubtedReading(leaf, this.#job) : exactly(leaf.value);
  }

  /** Whether what the leads may have added to a reading follows from a record of nulling. */
  leadsRecorded({ detail }: Measured<"ohm">): boolean {
    return detail.taken.leads?.half !== undefined;
  }

  /** A name of this inspection alone. */
  own(name: string): string {
    return `${this.#job.id} ${name}`;
  }
}
