import { ITEM_IDS } from "@good-grounds/inspection";
import {
  type Board,
  type Circuit,
  type Device,
  type House,
  permittedPerMetre,
  type ResidualDevice,
} from "../house/house.ts";
import { circuitReadings, type Readings } from "./circuit-readings.ts";
import { loopAtBoard, loopAtOrigin } from "./loop.ts";
import type { Site } from "./site.ts";

/** A circuit as the file holds it, as far as slips of writing reach it. */
export interface WrittenCircuit {
  id: string;
  cable: Record<string, unknown>;
  device: Record<string, unknown>;
  readings: Readings;
}

export interface WrittenBoard {
  id: string;
  rcds: Record<string, unknown>[];
  readings: Readings;
  circuits: WrittenCircuit[];
}

/** An inspection file as somebody writes it. */
export interface Written {
  supply: { readings: Readings; earthing: string; bonding: { id: string; resistance?: unknown }[] };
  boards: WrittenBoard[];
  conclusion: Record<string, unknown>;
  [more: string]: unknown;
}

const shown = (text: string) => ({ shown: text, with: "mft" });

/** Everything that is written of an installation after a day on site. */
export function written(site: Site): Written {
  const { house, care, draws } = site;
  const dead = house.ambient + draws.bell("ambient-read", 0.7, 2);
  return {
    format: "good-grounds-inspection",
    version: 3,
    id: "simulated",
    invented: true,
    edition: "2018+A4",
    inspectedOn: "2026-11-20",
    brief: {
      client: { name: "A. N. Owner (invented)" },
      premises: { address: ["1 Example Lane"] },
      use: "dwelling",
      tenure: "owner-occupied",
      nation: "england",
      purpose: "simulated job",
      records: [],
    },
    visits: [{ date: "2026-11-20" }],
    people: [{ id: "inspector", name: "J. Sample (invented)" }],
    instruments: [instrument(site)],
    ...(care.temperatureWritten > 0 && draws.happens("conditions", 0.7)
      ? { conditions: { conductorTemperature: { shown: `${Math.round(dead)} °C` } } }
      : {}),
    extent: { covered: "The whole installation.", sampling: [] },
    limitations: [],
    supply: supplyOf(site),
    boards: house.boards.map((board) => boardOf(site, board)),
    inspected: ITEM_IDS.map((item) => ({ item, outcome: "in-order" })),
    observations: [],
    photographs: [],
    conclusion: {
      outcome: "satisfactory",
      nextInspection: { by: "2031-11-19", reason: "Sound, in a house lived in." },
    },
    signatures: [],
  };
}

function instrument({ meter, care }: Site) {
  const ranges = ["continuity", "loop", "insulation", "rcd-time", "voltage", "electrode"] as const;
  return {
    id: "mft",
    kind: "multifunction installation tester",
    serial: "INV-1",
    ...(care.accuracyStated
      ? { accuracy: Object.fromEntries(ranges.map((range) => [range, meter.accuracyText(range)])) }
      : {}),
  };
}

function supplyOf(site: Site): Written["supply"] & Record<string, unknown> {
  const { house, draws, meter, live, care } = site;
  const { earthing, volts, bonds } = house;
  const external = loopAtOrigin(house, "E", live);
  const neutral = loopAtOrigin(house, "N", live);
  const least = Math.min(neutral, external);
  const readings: Readings = {
    ze: shown(site.loop(external, "ze")),
    faultCurrent: shown(meter.current(least, volts, "pfc")),
    voltage: shown(meter.volts(volts)),
    polarity: "correct",
  };
  if (draws.happens("loop-L-N", care.level < 3 ? 0.7 : 0.4))
    readings.lineNeutralLoop = shown(site.loop(neutral, "loop-L-N"));
  if (earthing === "TT") readings.ra = shown(meter.ohms("electrode", electrodeOf(house), "ra"));
  return {
    earthing,
    phases: 1,
    nominalVoltage: "230 V",
    public: true,
    device: device(house.fuse),
    tails: { size: `${house.tails} mm²`, material: "copper" },
    neutral: { size: "25 mm²", material: "copper" },
    earthingConductor: { size: `${house.earthingConductor} mm²`, material: "copper", arrangement: "separate" },
    bonding: bonds.map((bond) => ({
      ...{ id: bond.id, to: bond.to, extraneous: true, connected: true, size: `${bond.size} mm²`, material: "copper" },
      length: `${Math.max(1, Math.round(bond.metres * (1 + draws.between(`bond-length.${bond.id}`, -care.length, care.length))))} m`,
      resistance: shown(site.continuity(permittedPerMetre(bond.size) * bond.metres, `bond.${bond.id}`)),
    })),
    ...(earthing === "TT" ? { electrode: { kind: "rod" } } : {}),
    mainSwitch: { standard: "BS EN 60947-3", poles: 2, rated: "100 A", voltage: "230 V" },
    maximumDemand: { value: `${house.demand} A`, method: "diversity" },
    readings,
  };
}

function electrodeOf({ parts }: House): number {
  return parts.find(({ a, b }) => a === "soil" && b === "earth-terminal")?.ohms ?? Number.NaN;
}

function boardOf(site: Site, board: Board): WrittenBoard {
  const { house, draws, care, meter, live } = site;
  const { id } = board;
  const circuits = house.circuits.filter((circuit) => circuit.board === id);
  const readings: Readings = { polarity: "correct" };
  if (draws.happens(`zdb.${id}`, care.boardLoop))
    readings.zdb = shown(site.loop(loopAtBoard(house, id, "E", live), `zdb.${id}`));
  const least = Math.min(loopAtBoard(house, id, "N", live), loopAtBoard(house, id, "E", live));
  if (!site.blank(`pfc.${id}`)) readings.faultCurrent = shown(meter.current(least, house.volts, `pfc.${id}`));
  if (draws.happens(`insulation.${id}`, care.boardInsulation)) {
    const all = circuits.reduce((sum, { insulation }) => sum + 1 / insulation.earth, 1 / board.besides);
    readings.insulationLiveEarth = shown(meter.megohms(1 / all, `insulation.${id}`));
  }
  const more = {
    name: board.name,
    fedFrom: board.fedFrom,
    phases: 1,
    enclosure: "metal",
    mainSwitch: { poles: 2, rated: `${board.switchAmperes} A` },
  };
  return {
    ...more,
    id,
    rcds: board.rcds.map((rcd, i) => ({
      ...residual(site, rcd, id),
      id: rcd.id,
      serves: board.whole && i === 0 ? "whole-board" : "listed",
    })),
    readings,
    circuits: circuits.map((circuit, i) => circuitOf(site, circuit, i + 1)),
  };
}

function circuitOf(site: Site, circuit: Circuit, number: number): WrittenCircuit {
  const { id, rcd, cable } = circuit;
  const metres = site.metres(circuit);
  const more = {
    designation: String(number),
    description: circuit.says,
    shape: circuit.shape,
    load: circuit.load,
    phases: 1,
    points: circuit.points.length,
    socketOutlets: circuit.sockets,
    rcd: typeof rcd === "string" ? rcd : "own" in rcd ? { own: residual(site, rcd.own, id) } : rcd,
    ...(site.draws.happens(`current.${id}`, site.care.currentWritten) ? { designCurrent: `${circuit.amperes} A` } : {}),
  };
  const copperCpc = cable.arrangement === "in-cable" || cable.arrangement === "separate";
  return {
    ...more,
    id,
    device: device(circuit.device),
    cable: {
      kind: cable.kind,
      insulation: cable.insulation,
      material: cable.material,
      line: `${cable.line} mm²`,
      ...(copperCpc ? { cpc: `${cable.cpc} mm²` } : {}),
      cpcArrangement: cable.arrangement,
      methods: cable.methods,
      ...(metres === undefined ? {} : { length: `${metres} m` }),
    },
    readings: circuitReadings(site, circuit),
  };
}

function device({ standard, type, amperes, kiloamperes }: Device): Record<string, unknown> {
  const breaker = standard === "BS EN 60898" || standard === "BS EN 61009";
  return {
    standard,
    ...(type === undefined ? {} : { type }),
    rated: `${amperes} A`,
    breakingCapacity: `${kiloamperes} kA`,
    ...(breaker ? { energyClass: 3 } : {}),
  };
}

function residual({ meter }: Site, rcd: ResidualDevice, at: string): Record<string, unknown> {
  const { standard, type, delay, milliamperes, milliseconds } = rcd;
  return {
    standard,
    type,
    delay,
    residual: `${milliamperes} mA`,
    readings: {
      atRated: shown(meter.milliseconds(milliseconds, `rcd.${at}.${rcd.id}`)),
      button: Number.isFinite(milliseconds) ? "trips" : "does-not-trip",
    },
  };
}
