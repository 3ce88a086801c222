import type { ReferenceMethod, Source } from "@good-grounds/core";

/** One size of a capacity table. */
export interface CapacityRow {
  /** mm². */
  readonly size: number;
  /** A, by reference method and number of loaded conductors; each cell with its own source, since some were seen and some not. */
  readonly capacities: readonly (readonly [method: ReferenceMethod, loaded: 2 | 3, amperes: number, source: Source])[];
  /** mV/A/m, single-phase and three-phase. */
  readonly drop: readonly [single: number, three: number | null];
  readonly dropSource: Source;
}
