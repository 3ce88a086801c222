import type { CircuitLoad, DeviceStandard, DeviceType, ReferenceMethod } from "@good-grounds/core";

/** A circuit as it really is; the file gets what an inspector would read of it. Lengths in m, resistances in Ω. */
export interface TrueCircuit {
  readonly id: string;
  readonly name: string;
  readonly shape: "ring" | "radial" | "distribution";
  readonly load: CircuitLoad;
  readonly device: {
    readonly standard: DeviceStandard;
    readonly type?: DeviceType;
    readonly rated: number;
    readonly kiloamperes?: number;
    readonly energyClass?: 1 | 2 | 3;
  };
  /** RCD: none, the device itself, or one of the board by id. */
  readonly rcd: "none" | "own" | string;
  readonly cable: TrueCable;
  readonly designCurrent?: number;
  readonly points?: number;
  readonly phases?: 1 | 3;
  /** Insulation resistance; drawn when left out. */
  readonly insulation?: number;
  /** Extra resistance of a bad joint in the protective conductor. */
  readonly joint?: number;
  /** Resistance of a way from the far end to the main earthing terminal other than the protective conductor. */
  readonly parallelPath?: number;
  /** Points of a ring as parts of its length. */
  readonly ringPoints?: readonly number[];
  /** Length of an unfused spur at the last point. */
  readonly spur?: number;
  readonly note?: string;
  /** Why the circuit could not be tested at all. */
  readonly untested?: string;
  /** Why its insulation could not be tested. */
  readonly insulationUntested?: string;
}

export interface TrueCable {
  readonly kind: "flat-twin-and-cpc" | "singles" | "armoured" | "multicore";
  readonly line: number;
  readonly cpc: number;
  readonly length: number;
  readonly methods: readonly ReferenceMethod[];
  /** Length is written as a range when the route was not seen. */
  readonly lengthKnown?: boolean;
}

export interface TrueBoard {
  readonly id: string;
  readonly name: string;
  readonly location: string;
  readonly fedFrom: "supply" | { readonly board: string; readonly circuit: string };
  readonly phases?: 1 | 3;
  readonly enclosure: "metal" | "non-combustible" | "combustible" | "wood-backed";
  readonly mainSwitch: number;
  readonly rcds?: readonly {
    readonly id: string;
    readonly serves: "whole-board" | "listed";
    readonly residual: number;
    readonly delay: "general" | "S";
    readonly seconds?: number;
  }[];
  /** On which visit it was tested, counted from 0; the first when left out. */
  readonly visit?: number;
  readonly circuits: readonly TrueCircuit[];
}

export interface TrueInstallation {
  readonly seed: number;
  /** Temperature of the conductors during the tests. */
  readonly celsius: number;
  /** Loop at the origin: supply loop and, on TT, the electrode. */
  readonly ze: number;
  /** Resistance of the earth electrode, where the installation has its own. */
  readonly electrode?: number;
  /** Line to neutral loop at the origin. */
  readonly lineNeutral: number;
  /** Line to neutral volts at the time of the test. */
  readonly volts: number;
  readonly phases: 1 | 3;
  /** Each day on site with the time the tests began, local time. */
  readonly visits: readonly { readonly day: string; readonly testsFrom: string }[];
  readonly boards: readonly TrueBoard[];
}
