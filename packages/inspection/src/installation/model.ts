import type {
  ButtonResult,
  CircuitLoad,
  CircuitShape,
  DeviceStandard,
  EarthingSystem,
  Evidence,
  Fact,
  Grouping,
  Nation,
  Path,
  PremisesUse,
  ReferenceMethod,
  Tenure,
  UnknownFact,
} from "@good-grounds/core";
import type { BOARD_READINGS } from "../fields/board-readings.ts";
import type { BOND, BOND_READINGS, BONDED_PART } from "../fields/bonding.ts";
import type { CABLE_MAKE, CABLE_RUN, CABLE_SURROUNDED } from "../fields/cable.ts";
import type { CIRCUIT_READINGS } from "../fields/circuit-readings.ts";
import type { conductorFields } from "../fields/conductor.ts";
import type { OVERCURRENT_DEVICE, RESIDUAL_DEVICE, RESIDUAL_STATE } from "../fields/device.ts";
import type { LeavesOf } from "../fields/field.ts";
import type { LETTING } from "../fields/letting.ts";
import type { SUPPLY_READINGS } from "../fields/supply-readings.ts";
import type { DraftFile } from "../schema/draft.ts";
import type { Things } from "./things.ts";

/** A list of the file. */
type ListOf<K extends keyof DraftFile> = NonNullable<DraftFile[K]>;

/** What is known of the letting: evidence, and days as recorded; undefined where they are not. */
export interface Letting extends LeavesOf<typeof LETTING> {
  readonly starts: string | undefined;
  readonly granted: string | undefined;
  readonly equipmentChecked: string | undefined;
}

/** An observation as far as it was written down. */
export type ObservationEntry = ListOf<"observations">[number];

/**
 * An inspection file resolved for judging: references followed, every value an evidence leaf that knows its place in
 * the file. What was not recorded is a leaf that is not known; nothing is absent and nothing is made up.
 */
export interface Installation<F extends DraftFile = DraftFile> {
  /** What was resolved: for those who print or hand on what was written. Whatever judges reads the evidence. */
  readonly file: F;
  /** The edition the report is made to; undefined where none was chosen yet. */
  readonly edition: F["edition"];
  /** The number of the inspection; undefined where none was given. */
  readonly id: F["id"];
  /** Lines of the address of the premises; none where none was recorded. */
  readonly address: readonly string[];
  /** The day by which the next inspection is due, where the inspector named one. */
  readonly nextInspectionBy: string | undefined;
  /** Days the report sets for work, the day of the inspection as the first; undefined where it sets none. */
  readonly workWithinDays: number | undefined;
  readonly letting: Letting;
  readonly use: Fact<PremisesUse>;
  readonly nation: Fact<Nation>;
  readonly tenure: Fact<Tenure>;
  /** The date of inspection, as a calendar day; undefined where it is not recorded. */
  readonly inspectedOn: F["inspectedOn"];
  readonly visits: ListOf<"visits">;
  readonly instruments: ListOf<"instruments">;
  /** What was stated in words and choices; empty where nothing was. */
  readonly observations: ListOf<"observations">;
  /** Not known where nobody recorded whether there are any. */
  readonly observationsListed: Fact<boolean>;
  readonly standingViews: ListOf<"standingViews">;
  readonly inspected: ListOf<"inspected">;
  readonly earthingOff: ListOf<"earthingOff">;
  readonly limitations: ListOf<"limitations">;
  /** Samples of the extent, with what was found in them. */
  readonly sampling: readonly NonNullable<ListOf<"extent">["sampling"]>[number][];
  /** The outcome as the inspector states it; undefined where it is not stated. */
  readonly statedOutcome: NonNullable<DraftFile["conclusion"]>["outcome"];
  /** What the inspector wrote to checks of their own figures. */
  readonly ownFigures: ListOf<"ownFigures">;
  readonly decisionRule: DraftFile["decisionRule"];
  readonly supply: Supply;
  readonly boards: readonly Board[];
  /** Not known where nobody recorded which boards there are, or where one could not be read. */
  readonly boardsListed: Fact<boolean>;
  /** Every circuit of every board, in the order of the file. */
  readonly circuits: readonly Circuit[];
  /** Things listed one by one, and those that observations bring in. */
  readonly things: Things;
}

export interface OvercurrentDevice extends LeavesOf<typeof OVERCURRENT_DEVICE> {
  readonly path: Path;
  /** Energy limiting class from the label, "1" to "3". */
  readonly energyClass: Fact<"1" | "2" | "3">;
  /** Let-through energy from the maker, where held. */
  readonly letThrough: Evidence<"ampere-squared-second">;
  readonly letThroughFrom: string | undefined;
}

export interface ResidualDevice extends LeavesOf<typeof RESIDUAL_DEVICE>, LeavesOf<typeof RESIDUAL_STATE> {
  readonly path: Path;
  readonly id: string | undefined;
  readonly timeAtRated: Evidence<"second">;
  readonly timeAtFive: Evidence<"second">;
  readonly button: Fact<ButtonResult>;
  /** Undefined where it is not recorded which circuits the device serves. */
  readonly servesWholeBoard: boolean | undefined;
  /** Why it cannot be tested, as written down. */
  readonly whyNotTested: string | undefined;
}

export type Conductor = LeavesOf<ReturnType<typeof conductorFields>>;

export interface EarthingConductor extends Conductor {
  readonly path: Path;
  readonly arrangement: Fact<"separate" | "in-cable" | "buried">;
  readonly sheathed: Fact<boolean>;
  readonly mechanicallyProtected: Fact<boolean>;
}

export interface BondingConductor
  extends Conductor,
    LeavesOf<typeof BONDED_PART>,
    LeavesOf<typeof BOND>,
    LeavesOf<typeof BOND_READINGS> {
  readonly path: Path;
  readonly id: string;
  /** Undefined where it is not recorded. */
  readonly to: NonNullable<NonNullable<DraftFile["supply"]>["bonding"]>[number]["to"];
}

export interface Supply extends LeavesOf<typeof SUPPLY_READINGS> {
  readonly path: Path;
  readonly earthing: Fact<EarthingSystem>;
  /** "1" or "3". */
  readonly phases: Fact<"1" | "3">;
  readonly public: Fact<boolean>;
  readonly nominalVoltage: Evidence<"volt">;
  readonly device: OvercurrentDevice;
  readonly tails: Conductor;
  readonly neutral: Conductor;
  readonly earthingConductor: EarthingConductor;
  readonly bonding: readonly BondingConductor[];
  readonly mainSwitchRated: Evidence<"ampere">;
  /** What feeds the installation beside the network, and whether notices warn of it. */
  readonly otherSources: readonly {
    readonly path: Path;
    readonly kind: NonNullable<NonNullable<DraftFile["supply"]>["otherSources"]>[number]["kind"];
    readonly notice: Fact<boolean>;
  }[];
  readonly statedDemand: Evidence<"ampere">;
}

export interface ConditionalRating {
  readonly path: Path;
  readonly value: Evidence<"ampere">;
  readonly upstreamStandard: Fact<DeviceStandard>;
  readonly upstreamRated: Evidence<"ampere">;
  readonly devicesOfOneMake: Fact<boolean>;
}

export interface Board extends LeavesOf<typeof BOARD_READINGS> {
  readonly path: Path;
  readonly id: string;
  readonly name: string;
  /** The circuit that feeds it; undefined when it is fed from the supply or nobody recorded from where. */
  readonly feeder: Circuit | undefined;
  readonly atOrigin: Fact<boolean>;
  /** Not known where nobody recorded which circuits there are; a board may also have none. */
  readonly circuitsListed: Fact<boolean>;
  readonly phases: Fact<"1" | "3">;
  readonly enclosure: Fact<"metal" | "non-combustible" | "combustible" | "wood-backed">;
  /** Whether there is a main switch in it; not known where nobody recorded that. */
  readonly mainSwitchFitted: Fact<boolean>;
  readonly mainSwitchPoles: Fact<"1" | "2" | "3" | "4">;
  readonly rcds: readonly ResidualDevice[];
  /** How many RCDs that serve several circuits are listed; not known where nobody recorded whether there are any. */
  readonly rcdsListed: Fact<"none" | "one" | "several">;
  readonly mainSwitchRated: Evidence<"ampere">;
  readonly conditionalRating: ConditionalRating | undefined;
  readonly circuits: readonly Circuit[];
}

export interface Cable
  extends LeavesOf<typeof CABLE_MAKE>,
    LeavesOf<typeof CABLE_RUN>,
    LeavesOf<typeof CABLE_SURROUNDED> {
  readonly path: Path;
  readonly cores: number | undefined;
  /** Every method the route may have; empty when none was recorded. */
  readonly methods: readonly Fact<ReferenceMethod>[];
  readonly grouping: Fact<Grouping>;
  readonly groupedCircuits: Evidence<"ratio">;
}

export interface CircuitReadings extends LeavesOf<typeof CIRCUIT_READINGS> {
  readonly path: Path;
}

/** Which residual current devices stand before a circuit. */
export interface ResidualProtection {
  /** Whether there is any: yes, no, or not known. */
  readonly present: Fact<boolean>;
  /** Devices in the way of the circuit's current within its own board, nearest to the circuit first. */
  readonly devices: readonly ResidualDevice[];
  /** A device that the circuit names and of which nothing is recorded; undefined where there is none. */
  readonly unseen: UnknownFact | undefined;
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
