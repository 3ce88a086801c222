import {
  CABLE_KINDS,
  type CableKind,
  type ConductorMaterial,
  type Insulation,
  type NotKnown,
  type Published,
  published,
  REFERENCE_METHODS,
  type ReferenceMethod,
  TERM,
} from "@good-grounds/core";
import { byKey } from "../by-key.ts";
import { notTabulated } from "../not-tabulated.ts";
import { ARMOURED_70 } from "./armoured-70.ts";
import { ARMOURED_90 } from "./armoured-90.ts";
import type { CapacityRow } from "./capacity-row.ts";
import { FLAT_TWIN } from "./flat-twin.ts";
import { MULTICORE } from "./multicore.ts";
import { SINGLES } from "./singles.ts";

/** A cable as the capacity tables ask for it. */
export interface TabulatedCable {
  readonly kind: CableKind;
  readonly insulation: Insulation;
  readonly material: ConductorMaterial;
  /** mm². */
  readonly area: number;
  /** Two for single-phase, three for three-phase. */
  readonly loadedConductors: 2 | 3;
}

interface Table {
  readonly number: string;
  readonly kind: CableKind;
  readonly insulation: Insulation;
  readonly rows: readonly CapacityRow[];
}

/** The copper tables carried here. */
export const CAPACITY_TABLES: readonly Table[] = Object.freeze([
  { number: "4D5", kind: "flat-twin-and-cpc", insulation: "70C-thermoplastic", rows: FLAT_TWIN },
  { number: "4D1", kind: "singles", insulation: "70C-thermoplastic", rows: SINGLES },
  { number: "4D2", kind: "multicore", insulation: "70C-thermoplastic", rows: MULTICORE },
  { number: "4D4", kind: "armoured", insulation: "70C-thermoplastic", rows: ARMOURED_70 },
  { number: "4E4", kind: "armoured", insulation: "90C-thermosetting", rows: ARMOURED_90 },
]);

type ByArea<N> = ReadonlyMap<number, N>;
type Loaded = 2 | 3;

/** A table made ready to be looked up. */
interface Ready {
  readonly capacities: ReadonlyMap<ReferenceMethod, Readonly<Record<Loaded, ByArea<Published<"ampere">>>>>;
  readonly drops: Readonly<Record<Loaded, ByArea<Published<"volt-per-ampere-metre">>>>;
}

function capacityColumn({ number, rows }: Table, method: ReferenceMethod, loaded: Loaded): ByArea<Published<"ampere">> {
  return byKey(
    rows.flatMap(({ size, capacities }) =>
      capacities
        .filter(([m, n]) => m === method && n === loaded)
        .map(([, , amperes, from]) => {
          const words = `Table ${number}A, ${size} mm², method ${method}, ${loaded} loaded conductors`;
          return [size, published(TERM.tabulatedCapacity, amperes, from, words)] as const;
        }),
    ),
  );
}

function dropColumn({ number, rows }: Table, loaded: Loaded): ByArea<Published<"volt-per-ampere-metre">> {
  return byKey(
    rows.flatMap(({ size, drop: [single, three], dropSource }) => {
      const millivolts = loaded === 2 ? single : three;
      if (millivolts === null) return [];
      const words = `Table ${number}B, ${size} mm², ${loaded === 2 ? "single-phase" : "three-phase"}`;
      // The power of ten is applied to the decimal as printed: 7.3 mV/A/m becomes the double nearest to 0.0073.
      const node = published(TERM.dropPerAmpereMetre, Number(`${millivolts}e-3`), dropSource, words);
      return [[size, node] as const];
    }),
  );
}

const ready = (table: Table): Ready => ({
  capacities: new Map(
    REFERENCE_METHODS.map((method) => [
      method,
      { 2: capacityColumn(table, method, 2), 3: capacityColumn(table, method, 3) },
    ]),
  ),
  drops: { 2: dropColumn(table, 2), 3: dropColumn(table, 3) },
});

const READY: ReadonlyMap<CableKind, ReadonlyMap<Insulation, Ready>> = new Map(
  CABLE_KINDS.map((kind) => [
    kind,
    byKey(
      CAPACITY_TABLES.filter((table) => table.kind === kind).map((table) => [table.insulation, ready(table)] as const),
    ),
  ]),
);

function readyFor({ kind, insulation, material }: TabulatedCable): Ready | undefined {
  return material === "copper" ? READY.get(kind)?.get(insulation) : undefined;
}

function words({ kind, insulation, material, area, loadedConductors }: TabulatedCable): string {
  return `${material} ${kind}, ${insulation}, ${area} mm², ${loadedConductors} loaded conductors`;
}

/** Tabulated current-carrying capacity It in A at 30 °C ambient (20 °C ground). Only copper is carried here. */
export function tabulatedCapacity(
  cable: TabulatedCable & { readonly method: ReferenceMethod },
): Published<"ampere"> | NotKnown<"ampere"> {
  const { method, area, loadedConductors } = cable;
  return (
    readyFor(cable)?.capacities.get(method)?.[loadedConductors].get(area) ??
    notTabulated(TERM.tabulatedCapacity, "the capacity tables", `${words(cable)}, method ${method}`)
  );
}

/** Tabulated voltage drop at operating temperature, V/A/m. At 25 mm² and above it is the impedance. */
export function tabulatedDrop(
  cable: TabulatedCable,
): Published<"volt-per-ampere-metre"> | NotKnown<"volt-per-ampere-metre"> {
  const { area, loadedConductors } = cable;
  return (
    readyFor(cable)?.drops[loadedConductors].get(area) ??
    notTabulated(TERM.dropPerAmpereMetre, "the voltage drop tables", words(cable))
  );
}
