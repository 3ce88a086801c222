import { type Fact, fact, factNotKnown, type Path, TERM } from "@good-grounds/core";
import type { InspectionFile } from "../schema/file.ts";
import { Leaves } from "./leaves.ts";
import { MATTER } from "./matters.ts";
import type {
  Board,
  BondingConductor,
  Cable,
  Circuit,
  CircuitReadings,
  ConditionalRating,
  Conductor,
  EarthingConductor,
  Installation,
  OvercurrentDevice,
  ResidualDevice,
  ResidualProtection,
  Supply,
} from "./model.ts";

type BoardEntry = InspectionFile["boards"][number];
type CircuitEntry = BoardEntry["circuits"][number];
type DeviceEntry = NonNullable<CircuitEntry["device"]>;
type RcdEntry = NonNullable<BoardEntry["rcds"]>[number] | Extract<CircuitEntry["rcd"], { own: unknown }>["own"];
type ConductorEntry = NonNullable<InspectionFile["supply"]["tails"]>;

/** Resolves a parsed inspection file. The file must have passed the parser; references are trusted here. */
export function resolveInstallation(file: InspectionFile): Installation {
  const leaves = new Leaves(file);
  const circuits = new Map<string, Circuit>();
  const all: Circuit[] = [];
  const supply = resolveSupply(leaves, file);
  const boards = file.boards.map((entry, i): Board => {
    const path: Path = ["boards", i];
    const rcds = (entry.rcds ?? []).map((rcd, j) => residualDevice(leaves, rcd, [...path, "rcds", j]));
    const own: Circuit[] = [];
    const readings = entry.readings;
    const fedFrom = entry.fedFrom === "supply" ? undefined : `${entry.fedFrom.board} ${entry.fedFrom.circuit}`;
    const board: Board = {
      path,
      id: entry.id,
      name: entry.name,
      get feeder() {
        return fedFrom === undefined ? undefined : circuits.get(fedFrom);
      },
      phases: phases(leaves, entry.phases, [...path, "phases"]),
      rcds,
      zdb: leaves.reading(TERM.measuredZdb, readings?.zdb, "loop", [...path, "readings", "zdb"]),
      faultCurrent: leaves.reading(TERM.measuredFaultCurrent, readings?.faultCurrent, "fault-current", [
        ...path,
        "readings",
        "faultCurrent",
      ]),
      faultCurrentMethod: leaves.fact(MATTER.faultCurrentMethod, readings?.faultCurrentMethod, [
        ...path,
        "readings",
        "faultCurrentMethod",
      ]),
      polarity: leaves.fact(MATTER.polarity, readings?.polarity, [...path, "readings", "polarity"]),
      phaseSequence: leaves.fact(MATTER.phaseSequence, readings?.phaseSequence, [...path, "readings", "phaseSequence"]),
      insulationLiveLive: leaves.reading(TERM.insulation, readings?.insulationLiveLive, "insulation", [
        ...path,
        "readings",
        "insulationLiveLive",
      ]),
      insulationLiveEarth: leaves.reading(TERM.insulation, readings?.insulationLiveEarth, "insulation", [
        ...path,
        "readings",
        "insulationLiveEarth",
      ]),
      mainSwitchRated: leaves.quantity(TERM.ratedSwitch, entry.mainSwitch?.rated, [...path, "mainSwitch", "rated"]),
      conditionalRating: conditionalRating(leaves, entry, path),
      circuits: own,
    };
    for (const [j, circuitEntry] of entry.circuits.entries()) {
      const circuit = resolveCircuit(leaves, file, board, circuitEntry, [...path, "circuits", j]);
      own.push(circuit);
      all.push(circuit);
      circuits.set(`${entry.id} ${circuitEntry.id}`, circuit);
    }
    Object.freeze(own);
    return Object.freeze(board);
  });
  return Object.freeze({ file, edition: file.edition, supply, boards, circuits: Object.freeze(all) });
}

function phases(
  leaves: Leaves,
  entry: 1 | 3 | { notKnown: "limited" | "not-verified" | "not-applicable"; reason: string } | undefined,
  path: Path,
): Fact<"1" | "3"> {
  return leaves.fact(MATTER.phases, entry === 1 ? "1" : entry === 3 ? "3" : entry, path);
}

function resolveSupply(leaves: Leaves, file: InspectionFile): Supply {
  const entry = file.supply;
  const path: Path = ["supply"];
  const at = (...steps: (string | number)[]): Path => [...path, ...steps];
  const readings = entry.readings;
  return Object.freeze({
    path,
    earthing: leaves.fact(MATTER.earthingSystem, entry.earthing, at("earthing")),
    phases: phases(leaves, entry.phases, at("phases")),
    public: leaves.fact(MATTER.publicSupply, entry.public, at("public")),
    nominalVoltage: leaves.quantity(TERM.nominalVoltage, entry.nominalVoltage, at("nominalVoltage")),
    voltage: leaves.reading(TERM.measuredVoltage, readings?.voltage, "voltage", at("readings", "voltage")),
    ze: leaves.reading(TERM.measuredZe, readings?.ze, "loop", at("readings", "ze")),
    ra: leaves.reading(TERM.measuredRa, readings?.ra, "electrode", at("readings", "ra")),
    lineNeutralLoop: leaves.reading(
      TERM.lineNeutralLoop,
      readings?.lineNeutralLoop,
      "loop",
      at("readings", "lineNeutralLoop"),
    ),
    faultCurrent: leaves.reading(
      TERM.measuredFaultCurrent,
      readings?.faultCurrent,
      "fault-current",
      at("readings", "faultCurrent"),
    ),
    faultCurrentMethod: leaves.fact(
      MATTER.faultCurrentMethod,
      readings?.faultCurrentMethod,
      at("readings", "faultCurrentMethod"),
    ),
    earthFaultCurrent: leaves.reading(
      TERM.earthFaultCurrent,
      readings?.earthFaultCurrent,
      "fault-current",
      at("readings", "earthFaultCurrent"),
    ),
    polarity: leaves.fact(MATTER.polarity, readings?.polarity, at("readings", "polarity")),
    phaseSequence: leaves.fact(MATTER.phaseSequence, readings?.phaseSequence, at("readings", "phaseSequence")),
    device: overcurrentDevice(leaves, entry.device, at("device")),
    tails: conductor(leaves, entry.tails, at("tails"), TERM.tailsArea),
    neutral: conductor(leaves, entry.neutral, at("neutral"), TERM.neutralArea),
    earthingConductor: earthingConductor(leaves, entry.earthingConductor, at("earthingConductor")),
    bonding: Object.freeze(
      entry.bonding.map(
        (bond, i): BondingConductor =>
          Object.freeze({
            ...conductor(leaves, bond, at("bonding", i), TERM.bondArea),
            path: at("bonding", i),
            id: bond.id,
            to: bond.to,
            extraneous: leaves.fact(MATTER.extraneous, bond.extraneous, at("bonding", i, "extraneous")),
            connected: leaves.fact(MATTER.connected, bond.connected, at("bonding", i, "connected")),
            resistance: leaves.reading(
              TERM.bondResistance,
              bond.resistance,
              "continuity",
              at("bonding", i, "resistance"),
            ),
          }),
      ),
    ),
    mainSwitchRated: leaves.quantity(TERM.ratedSwitch, entry.mainSwitch?.rated, at("mainSwitch", "rated")),
    statedDemand: leaves.quantity(TERM.maximumDemand, entry.maximumDemand?.value, at("maximumDemand", "value")),
  });
}

function conductor(
  leaves: Leaves,
  entry: ConductorEntry | undefined,
  path: Path,
  area: (typeof TERM)["area" | "tailsArea" | "neutralArea" | "earthingArea" | "bondArea"],
): Conductor {
  return Object.freeze({
    size: leaves.quantity(area, entry?.size, [...path, "size"]),
    material: leaves.fact(MATTER.material, entry?.material, [...path, "material"]),
    length: leaves.quantity(TERM.length, entry?.length, [...path, "length"]),
  });
}

function earthingConductor(
  leaves: Leaves,
  entry: InspectionFile["supply"]["earthingConductor"],
  path: Path,
): EarthingConductor {
  return Object.freeze({
    ...conductor(leaves, entry, path, TERM.earthingArea),
    path,
    arrangement: leaves.fact(MATTER.earthingArrangement, entry?.arrangement, [...path, "arrangement"]),
    sheathed: leaves.fact(MATTER.sheathed, entry?.sheathed, [...path, "sheathed"]),
    mechanicallyProtected: leaves.fact(MATTER.mechanicallyProtected, entry?.mechanicallyProtected, [
      ...path,
      "mechanicallyProtected",
    ]),
  });
}

function overcurrentDevice(leaves: Leaves, entry: DeviceEntry | undefined, path: Path): OvercurrentDevice {
  const device = entry !== undefined && "notKnown" in entry ? undefined : entry;
  const silent = entry !== undefined && "notKnown" in entry ? entry : undefined;
  return Object.freeze({
    path,
    standard: leaves.fact(MATTER.deviceStandard, silent ?? device?.standard, [...path, "standard"]),
    type: leaves.fact(MATTER.deviceType, silent ?? device?.type, [...path, "type"]),
    rated: leaves.quantity(TERM.ratedCurrent, silent ?? device?.rated, [...path, "rated"]),
    breakingCapacity: leaves.quantity(TERM.breakingCapacity, silent ?? device?.breakingCapacity, [
      ...path,
      "breakingCapacity",
    ]),
    energyClass: leaves.fact(MATTER.energyClass, silent ?? energyClass(device?.energyClass), [...path, "energyClass"]),
    letThrough: leaves.quantity(TERM.letThrough, silent ?? device?.letThrough?.value, [...path, "letThrough", "value"]),
    letThroughFrom: device?.letThrough?.from,
  });
}

function energyClass(mark: number | undefined): "1" | "2" | "3" | undefined {
  return mark === undefined ? undefined : (String(mark) as "1" | "2" | "3");
}

function residualDevice(leaves: Leaves, entry: RcdEntry, path: Path): ResidualDevice {
  const readings = entry.readings;
  return Object.freeze({
    path,
    id: entry.id,
    standard: leaves.fact(MATTER.rcdStandard, entry.standard, [...path, "standard"]),
    type: leaves.fact(MATTER.rcdType, entry.type, [...path, "type"]),
    delay: leaves.fact(MATTER.rcdDelay, entry.delay, [...path, "delay"]),
    rated: leaves.quantity(TERM.ratedCurrent, entry.rated, [...path, "rated"]),
    residual: leaves.quantity(TERM.residualOperatingCurrent, entry.residual, [...path, "residual"]),
    timeAtRated: leaves.reading(TERM.rcdTime, readings?.atRated, "rcd-time", [...path, "readings", "atRated"]),
    timeAtFive: leaves.reading(TERM.rcdTimeFive, readings?.atFive, "rcd-time", [...path, "readings", "atFive"]),
    button: leaves.fact(MATTER.rcdButton, readings?.button, [...path, "readings", "button"]),
    servesWholeBoard: "serves" in entry && entry.serves === "whole-board",
  });
}

function conditionalRating(leaves: Leaves, entry: BoardEntry, board: Path): ConditionalRating | undefined {
  const rating = entry.conditionalRating;
  if (rating === undefined) return undefined;
  const path: Path = [...board, "conditionalRating"];
  return Object.freeze({
    path,
    value: leaves.quantity(TERM.conditionalRating, rating.value, [...path, "value"]),
    upstreamStandard: leaves.fact(MATTER.deviceStandard, rating.upstream.standard, [...path, "upstream", "standard"]),
    upstreamRated: leaves.quantity(TERM.ratedCurrent, rating.upstream.rated, [...path, "upstream", "rated"]),
    devicesOfOneMake: leaves.fact(MATTER.oneMake, rating.devicesOfOneMake, [...path, "devicesOfOneMake"]),
  });
}

function resolveCircuit(leaves: Leaves, file: InspectionFile, board: Board, entry: CircuitEntry, path: Path): Circuit {
  return Object.freeze({
    path,
    id: entry.id,
    designation: entry.designation,
    description: entry.description,
    board,
    shape: leaves.fact(MATTER.circuitShape, entry.shape, [...path, "shape"]),
    load: leaves.fact(MATTER.circuitLoad, entry.load, [...path, "load"]),
    phases: phases(leaves, entry.phases, [...path, "phases"]),
    points: entry.points,
    socketOutlets: leaves.fact(MATTER.socketOutlets, entry.socketOutlets, [...path, "socketOutlets"]),
    device: overcurrentDevice(leaves, entry.device, [...path, "device"]),
    residual: residualProtection(leaves, board, entry, [...path, "rcd"]),
    cable: cable(leaves, entry, [...path, "cable"]),
    designCurrent: leaves.quantity(TERM.designCurrent, entry.designCurrent, [...path, "designCurrent"]),
    readings: circuitReadings(leaves, file, entry, [...path, "readings"]),
  });
}

function residualProtection(leaves: Leaves, board: Board, entry: CircuitEntry, path: Path): ResidualProtection {
  const whole = board.rcds.filter((rcd) => rcd.servesWholeBoard);
  const { rcd } = entry;
  const present = fact(MATTER.rcdPresent, true, path);
  if (rcd === undefined || (rcd !== "none" && "notKnown" in rcd)) {
    if (whole.length > 0)
      return Object.freeze({ present: fact(MATTER.rcdPresent, true, whole[0]?.path ?? path), devices: whole });
    const unknown =
      rcd === undefined
        ? factNotKnown(MATTER.rcdPresent, path)
        : factNotKnown(MATTER.rcdPresent, path, rcd.notKnown, rcd.reason);
    return Object.freeze({ present: unknown, devices: [] });
  }
  if (rcd === "none") {
    if (whole.length === 0) return Object.freeze({ present: fact(MATTER.rcdPresent, false, path), devices: [] });
    return Object.freeze({ present: fact(MATTER.rcdPresent, true, whole[0]?.path ?? path), devices: whole });
  }
  if ("own" in rcd) {
    const own = residualDevice(leaves, rcd.own, [...path, "own"]);
    return Object.freeze({ present, devices: Object.freeze([own, ...whole]) });
  }
  const listed = board.rcds.filter((candidate) => candidate.id === rcd.board);
  const rest = whole.filter((candidate) => candidate.id !== rcd.board);
  return Object.freeze({ present, devices: Object.freeze([...listed, ...rest]) });
}

function cable(leaves: Leaves, circuit: CircuitEntry, path: Path): Cable {
  const entry = circuit.cable;
  return Object.freeze({
    path,
    kind: leaves.fact(MATTER.cableKind, entry?.kind, [...path, "kind"]),
    insulation: leaves.fact(MATTER.insulation, entry?.insulation, [...path, "insulation"]),
    material: leaves.fact(MATTER.material, entry?.material, [...path, "material"]),
    line: leaves.quantity(TERM.lineArea, entry?.line, [...path, "line"]),
    neutral: leaves.quantity(TERM.neutralArea, entry?.neutral, [...path, "neutral"]),
    cpc: leaves.quantity(TERM.cpcArea, entry?.cpc, [...path, "cpc"]),
    cpcArrangement: leaves.fact(MATTER.cpcArrangement, entry?.cpcArrangement, [...path, "cpcArrangement"]),
    cores: entry?.cores,
    methods: Object.freeze(
      (entry?.methods ?? []).map((method, i) => fact(MATTER.method, method, [...path, "methods", i])),
    ),
    length: leaves.quantity(TERM.length, entry?.length, [...path, "length"]),
    ambient: leaves.quantity(TERM.ambientTemperature, entry?.ambient, [...path, "ambient"]),
    grouping: leaves.fact(MATTER.grouping, entry?.grouped?.arrangement, [...path, "grouped", "arrangement"]),
    groupedCircuits: leaves.quantity(
      TERM.count,
      entry?.grouped === undefined ? undefined : String(entry.grouped.circuits),
      [...path, "grouped", "circuits"],
    ),
    surroundedByInsulation: leaves.quantity(TERM.length, entry?.surroundedByInsulation, [
      ...path,
      "surroundedByInsulation",
    ]),
  });
}

function circuitReadings(leaves: Leaves, file: InspectionFile, circuit: CircuitEntry, path: Path): CircuitReadings {
  const entry = circuit.readings;
  const at = (...steps: (string | number)[]): Path => [...path, ...steps];
  const own = entry?.temperature;
  const common = file.conditions?.conductorTemperature;
  const resistance = <K extends "r1" | "rn" | "r2" | "r1r2" | "r2Only">(
    key: K,
    quantity: (typeof TERM)["ringLine" | "ringNeutral" | "ringCpc" | "measuredR1R2" | "measuredR2"],
  ) => leaves.reading(quantity, entry?.[key], "continuity", at(key));
  return Object.freeze({
    path,
    temperature:
      own === undefined && common !== undefined
        ? leaves.reading(TERM.testTemperature, common, "temperature", ["conditions", "conductorTemperature"])
        : leaves.reading(TERM.testTemperature, own, "temperature", at("temperature")),
    r1: resistance("r1", TERM.ringLine),
    rn: resistance("rn", TERM.ringNeutral),
    r2: resistance("r2", TERM.ringCpc),
    crossLineNeutral: Object.freeze(
      (entry?.crossLineNeutral ?? []).map(({ point, reading }, i) => ({
        point,
        reading: leaves.reading(TERM.ringCrossLineNeutral, reading, "continuity", at("crossLineNeutral", i, "reading")),
      })),
    ),
    crossLineCpc: Object.freeze(
      (entry?.crossLineCpc ?? []).map(({ point, reading }, i) => ({
        point,
        reading: leaves.reading(TERM.ringCrossLineCpc, reading, "continuity", at("crossLineCpc", i, "reading")),
      })),
    ),
    r1r2: resistance("r1r2", TERM.measuredR1R2),
    r2Only: resistance("r2Only", TERM.measuredR2),
    insulationVoltage: leaves.fact(MATTER.insulationVoltage, entry?.insulationVoltage, at("insulationVoltage")),
    insulationLiveLive: leaves.reading(
      TERM.insulation,
      entry?.insulationLiveLive,
      "insulation",
      at("insulationLiveLive"),
    ),
    insulationLiveEarth: leaves.reading(
      TERM.insulation,
      entry?.insulationLiveEarth,
      "insulation",
      at("insulationLiveEarth"),
    ),
    insulationBetweenNeutrals: leaves.reading(
      TERM.insulation,
      entry?.insulationBetweenNeutrals,
      "insulation",
      at("insulationBetweenNeutrals"),
    ),
    polarity: leaves.fact(MATTER.polarity, entry?.polarity, at("polarity")),
    zs: leaves.reading(TERM.measuredZs, entry?.zs, "loop", at("zs")),
    faultCurrent: leaves.reading(TERM.measuredFaultCurrent, entry?.faultCurrent, "fault-current", at("faultCurrent")),
    leakage: leaves.reading(TERM.standingLeakage, entry?.leakage, "fault-current", at("leakage")),
  });
}
