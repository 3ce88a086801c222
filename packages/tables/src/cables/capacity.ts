import {
  type CableKind,
  type ConductorMaterial,
  type Insulation,
  type NotKnown,
  type Published,
  published,
  type ReferenceMethod,
  TERM,
} from "@good-grounds/core";
import { notTabulated } from "../not-tabulated.ts";
import { source } from "../sources.ts";
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

const CAPACITIES = new Map<string, Published<"ampere">>();
const DROPS = new Map<string, Published<"volt-per-ampere-metre">>();

for (const { number, kind, insulation, rows } of CAPACITY_TABLES) {
  const dropSource = source(
    `BS 7671 Table ${number}B`,
    "2008 to 2018+A4",
    number === "4D1" || number === "4E4" ? "published" : "memory",
    {
      formula: "within 2 % of 2·r or √3·r at operating temperature",
    },
  );
  for (const { size, capacities, drop } of rows) {
    for (const [method, loaded, amperes, from] of capacities) {
      const row = `Table ${number}A, ${size} mm², method ${method}, ${loaded} loaded conductors`;
      CAPACITIES.set(
        `${kind} ${insulation} ${method} ${size} ${loaded}`,
        published(TERM.tabulatedCapacity, amperes, from, row),
      );
    }
    for (const [i, millivolts] of drop.entries()) {
      if (millivolts === null) continue;
      const row = `Table ${number}B, ${size} mm², ${i === 0 ? "single-phase" : "three-phase"}`;
      const value = Number(`${millivolts}e-3`);
      DROPS.set(`${kind} ${insulation} ${size} ${i + 2}`, published(TERM.dropPerAmpereMetre, value, dropSource, row));
    }
  }
}

function words({ kind, insulation, material, area, loadedConductors }: TabulatedCable): string {
  return `${material} ${kind}, ${insulation}, ${area} mm², ${loadedConductors} loaded conductors`;
}

/** Tabulated current-carrying capacity It in A at 30 °C ambient (20 °C ground). Only copper is carried here. */
export function tabulatedCapacity(
  cable: TabulatedCable & { readonly method: ReferenceMethod },
): Published<"ampere"> | NotKnown<"ampere"> {
  const { kind, insulation, material, method, area, loadedConductors } = cable;
  const found =
    material === "copper" ? CAPACITIES.get(`${kind} ${insulation} ${method} ${area} ${loadedConductors}`) : undefined;
  return found ?? notTabulated(TERM.tabulatedCapacity, "the capacity tables", `${words(cable)}, method ${method}`);
}

/** Tabulated voltage drop at operating temperature, V/A/m. At 25 mm² and above it is the impedance. */
export function tabulatedDrop(
  cable: TabulatedCable,
): Published<"volt-per-ampere-metre"> | NotKnown<"volt-per-ampere-metre"> {
  const { kind, insulation, material, area, loadedConductors } = cable;
  const found = material === "copper" ? DROPS.get(`${kind} ${insulation} ${area} ${loadedConductors}`) : undefined;
  return found ?? notTabulated(TERM.dropPerAmpereMetre, "the voltage drop tables", words(cable));
}
