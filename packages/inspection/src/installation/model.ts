import type {
  CableKind,
  CircuitLoad,
  CircuitShape,
  ConductorMaterial,
  CpcArrangement,
  DeviceStandard,
  DeviceType,
  EarthingSystem,
  EditionId,
  Evidence,
  Fact,
  FaultCurrentMethod,
  Grouping,
  Insulation,
  Path,
  RcdDelay,
  RcdStandard,
  RcdType,
  ReferenceMethod,
} from "@good-grounds/core";
import type { InspectionFile } from "../schema/file.ts";

/**
 * An inspection file resolved for judging: references followed, every value an evidence leaf that knows its place in
 * the file. What was not recorded is a leaf that is not known; nothing is absent and nothing is made up.
 */
export interface Installation {
  readonly file: InspectionFile;
  readonly edition: EditionId;
  readonly supply: Supply;
  readonly boards: readonly Board[];
  /** Every circuit of every board, in the order of the file. */
  readonly circuits: readonly Circuit[];
}

export interface OvercurrentDevice {
  readonly path: Path;
  readonly standard: Fact<DeviceStandard>;
  readonly type: Fact<DeviceType>;
  readonly rated: Evidence<"ampere">;
  readonly breakingCapacity: Evidence<"ampere">;
  /** Energy limiting class from the label, "1" to "3". */
  readonly energyClass: Fact<"1" | "2" | "3">;
  /** Let-through energy from the maker, where held. */
  readonly letThrough: Evidence<"ampere-squared-second">;
  readonly letThroughFrom: string | undefined;
}

export interface ResidualDevice {
  readonly path: Path;
  readonly id: string | undefined;
  readonly standard: Fact<RcdStandard>;
  readonly type: Fact<RcdType>;
  readonly delay: Fact<RcdDelay>;
  readonly rated: Evidence<"ampere">;
  readonly residual: Evidence<"ampere">;
  readonly timeAtRated: Evidence<"second">;
  readonly timeAtFive: Evidence<"second">;
  readonly button: Fact<"trips" | "does-not-trip">;
  readonly servesWholeBoard: boolean;
}

export interface Conductor {
  readonly size: Evidence<"square-millimetre">;
  readonly material: Fact<ConductorMaterial>;
  readonly length: Evidence<"metre">;
}

export interface EarthingConductor extends Conductor {
  readonly path: Path;
  readonly arrangement: Fact<"separate" | "in-cable" | "buried">;
  readonly sheathed: Fact<boolean>;
  readonly mechanicallyProtected: Fact<boolean>;
}

export interface BondingConductor extends Conductor {
  readonly path: Path;
  readonly id: string;
  readonly to: InspectionFile["supply"]["bonding"][number]["to"];
  readonly extraneous: Fact<boolean>;
  readonly connected: Fact<boolean>;
  readonly resistance: Evidence<"ohm">;
}

export interface Supply {
  readonly path: Path;
  readonly earthing: Fact<EarthingSystem>;
  /** "1" or "3". */
  readonly phases: Fact<"1" | "3">;
  readonly public: Fact<boolean>;
  readonly nominalVoltage: Evidence<"volt">;
  readonly voltage: Evidence<"volt">;
  readonly ze: Evidence<"ohm">;
  readonly ra: Evidence<"ohm">;
  readonly lineNeutralLoop: Evidence<"ohm">;
  readonly faultCurrent: Evidence<"ampere">;
  readonly faultCurrentMethod: Fact<FaultCurrentMethod>;
  readonly earthFaultCurrent: Evidence<"ampere">;
  readonly polarity: Fact<"correct" | "incorrect">;
  readonly phaseSequence: Fact<"correct" | "incorrect">;
  readonly device: OvercurrentDevice;
  readonly tails: Conductor;
  readonly neutral: Conductor;
  readonly earthingConductor: EarthingConductor;
  readonly bonding: readonly BondingConductor[];
  readonly mainSwitchRated: Evidence<"ampere">;
  readonly statedDemand: Evidence<"ampere">;
}

export interface ConditionalRating {
  readonly path: Path;
  readonly value: Evidence<"ampere">;
  readonly upstreamStandard: Fact<DeviceStandard>;
  readonly upstreamRated: Evidence<"ampere">;
  readonly devicesOfOneMake: Fact<boolean>;
}

export interface Board {
  readonly path: Path;
  readonly id: string;
  readonly name: string;
  /** The circuit that feeds it; undefined when fed from the supply. */
  readonly feeder: Circuit | undefined;
  readonly phases: Fact<"1" | "3">;
  readonly rcds: readonly ResidualDevice[];
  readonly zdb: Evidence<"ohm">;
  readonly faultCurrent: Evidence<"ampere">;
  readonly faultCurrentMethod: Fact<FaultCurrentMethod>;
  readonly polarity: Fact<"correct" | "incorrect">;
  readonly phaseSequence: Fact<"correct" | "incorrect">;
  /** All circuits of the board measured together. */
  readonly insulationLiveLive: Evidence<"ohm">;
  readonly insulationLiveEarth: Evidence<"ohm">;
  readonly mainSwitchRated: Evidence<"ampere">;
  readonly conditionalRating: ConditionalRating | undefined;
  readonly circuits: readonly Circuit[];
}

export interface Cable {
  readonly path: Path;
  readonly kind: Fact<CableKind>;
  readonly insulation: Fact<Insulation>;
  readonly material: Fact<ConductorMaterial>;
  readonly line: Evidence<"square-millimetre">;
  readonly neutral: Evidence<"square-millimetre">;
  readonly cpc: Evidence<"square-millimetre">;
  readonly cpcArrangement: Fact<CpcArrangement>;
  readonly cores: number | undefined;
  /** Every method the route may have; empty when none was recorded. */
  readonly methods: readonly Fact<ReferenceMethod>[];
  readonly length: Evidence<"metre">;
  readonly ambient: Evidence<"celsius">;
  readonly grouping: Fact<Grouping>;
  readonly groupedCircuits: Evidence<"ratio">;
  readonly surroundedByInsulation: Evidence<"metre">;
}

export interface RingPoint {
  readonly point: string;
  readonly reading: Evidence<"ohm">;
}

export interface CircuitReadings {
  readonly path: Path;
  readonly temperature: Evidence<"celsius">;
  readonly r1: Evidence<"ohm">;
  readonly rn: Evidence<"ohm">;
  readonly r2: Evidence<"ohm">;
  readonly crossLineNeutral: readonly RingPoint[];
  readonly crossLineCpc: readonly RingPoint[];
  readonly r1r2: Evidence<"ohm">;
  readonly r2Only: Evidence<"ohm">;
  readonly insulationVoltage: Fact<"250 V" | "500 V" | "1000 V">;
  readonly insulationLiveLive: Evidence<"ohm">;
  readonly insulationLiveEarth: Evidence<"ohm">;
  /** The circuit's neutral against the neutrals of all others. */
  readonly insulationBetweenNeutrals: Evidence<"ohm">;
  readonly polarity: Fact<"correct" | "incorrect">;
  readonly zs: Evidence<"ohm">;
  readonly faultCurrent: Evidence<"ampere">;
  readonly leakage: Evidence<"ampere">;
}

/** Which residual current devices stand before a circuit. */
export interface ResidualProtection {
  /** Whether there is any: yes, no, or not known. */
  readonly present: Fact<boolean>;
  /** Devices in the way of the circuit's current within its own board, nearest to the circuit first. */
  readonly devices: readonly ResidualDevice[];
}

export interface Circuit {
  readonly path: Path;
  readonly id: string;
  readonly designation: string;
  readonly description: string;
  readonly board: Board;
  readonly shape: Fact<CircuitShape>;
  readonly load: Fact<CircuitLoad>;
  readonly phases: Fact<"1" | "3">;
  readonly points: number | undefined;
  readonly socketOutlets: Fact<boolean>;
  readonly device: OvercurrentDevice;
  readonly residual: ResidualProtection;
  readonly cable: Cable;
  readonly designCurrent: Evidence<"ampere">;
  readonly readings: CircuitReadings;
}
