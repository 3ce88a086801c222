import { type InspectionFile, parseInspectionData } from "@good-grounds/inspection";

/** The form of the two invented installations kept here as test data. Plain numbers with the unit in the name. */
export interface CaseFile {
  readonly id: string;
  readonly scenario: string;
  readonly inspection: {
    readonly ambient_C: number;
    readonly instrument: Readonly<Record<"continuity" | "loop" | "insulation" | "rcd", string>>;
  };
  readonly supply: {
    readonly system: string;
    readonly phases: 1 | 3;
    readonly U0_V: number;
    readonly Ze_ohm: number;
    readonly RA_ohm?: number;
    readonly Ipf_kA: number;
    readonly fuse: { readonly standard: string; readonly In_A: number };
    readonly tails_mm2: number;
    readonly neutral_mm2?: number;
    readonly earthing_conductor_mm2: number;
    readonly main_bonding: readonly {
      readonly to: string;
      readonly mm2: number | null;
      readonly R_ohm?: number;
      readonly incoming?: string;
      readonly heat_damage?: boolean;
    }[];
  };
  readonly boards: readonly {
    readonly id: string;
    readonly location: string;
    readonly enclosure: string;
    readonly spd: boolean;
    readonly Zdb_ohm: number;
    readonly main_switch: { readonly poles: number; readonly In_A: number };
    readonly main_rcd?: {
      readonly IdN_mA: number;
      readonly class: string;
      readonly type: string;
      readonly trip_ms_at_IdN: number;
      readonly test_button: boolean;
    };
    readonly circuits: readonly CaseCircuit[];
  }[];
  readonly observations: readonly {
    readonly id: string;
    readonly text: string;
    readonly circuit?: number;
    readonly facts?: Readonly<Record<string, string | number | boolean>>;
  }[];
}

type Insulation = number | { readonly over: number };

interface CaseCircuit {
  readonly no: number;
  readonly description: string;
  readonly kind: "ring" | "radial" | "lighting";
  readonly phases: 1 | 3;
  readonly points: number;
  readonly device: {
    readonly standard: string;
    readonly type: string;
    readonly In_A: number;
    readonly breaking_capacity_kA: number;
  };
  readonly rcd: { readonly IdN_mA: number; readonly type: string; readonly class: string } | null;
  readonly cable: {
    readonly kind: string;
    readonly line_mm2: number;
    readonly cpc_mm2: number;
    readonly length_m: number;
    readonly ref_method: string;
  };
  readonly design_current_A: number;
  readonly readings: {
    readonly r1_ohm?: number;
    readonly rn_ohm?: number;
    readonly r2_ohm?: number;
    readonly cross_L_N_ohm?: Readonly<Record<string, number>>;
    readonly cross_L_cpc_ohm?: Readonly<Record<string, number>>;
    readonly R1R2_ohm: number;
    readonly Zs_ohm: number;
    readonly IR_live_live_Mohm: Insulation;
    readonly IR_live_earth_Mohm: Insulation;
    readonly polarity: string;
    readonly temperature_C: number;
    readonly rcd_trip_ms_at_IdN?: number;
    readonly rcd_test_button?: boolean;
  };
}

const ohms = (value: number) => ({ shown: `${value.toFixed(2)} Ω` });
const megohms = (value: Insulation) => ({ shown: typeof value === "number" ? `${value} MΩ` : `>${value.over} MΩ` });
const points = (readings: Readonly<Record<string, number>> = {}) =>
  Object.entries(readings).map(([point, value]) => ({ point, reading: ohms(value) }));
const accuracy = (text: string) => /\d+ %(?: \+ \d+ digits?)?/.exec(text)?.[0] ?? "2 %";

/** The class of an RCD as the case words it: "general", or "S" with an explanation. */
function delay(words: string): "general" | "S" {
  if (words === "general") return "general";
  if (/^S\b/.test(words)) return "S";
  throw new Error(`an RCD of a class that is not known here: ${words}`);
}

function load(circuit: CaseCircuit): string {
  const words = circuit.description;
  if (/socket/.test(words)) return "socket-outlets";
  if (/^lights/.test(words)) return "lighting";
  if (/cooker/.test(words)) return "cooker";
  if (/shower/.test(words)) return "shower";
  if (/immersion|boiler/.test(words)) return "water-heater";
  if (/alarm/.test(words)) return "alarm";
  return "fixed-equipment";
}

function adaptCircuit(circuit: CaseCircuit) {
  const { readings, cable, device, rcd } = circuit;
  const armoured = cable.kind.startsWith("steel-armoured");
  return {
    id: `c${circuit.no}`,
    designation: String(circuit.no),
    description: circuit.description,
    shape: circuit.kind === "ring" ? "ring" : "radial",
    load: load(circuit),
    phases: circuit.phases,
    points: circuit.points,
    device: {
      standard: device.standard,
      type: device.type,
      rated: `${device.In_A} A`,
      breakingCapacity: `${device.breaking_capacity_kA} kA`,
    },
    rcd:
      rcd === null
        ? "none"
        : {
            own: {
              standard: device.standard,
              type: rcd.type,
              delay: delay(rcd.class),
              residual: `${rcd.IdN_mA} mA`,
              readings: {
                atRated: { shown: `${readings.rcd_trip_ms_at_IdN} ms` },
                button: readings.rcd_test_button === true ? "trips" : "does-not-trip",
              },
            },
          },
    cable: {
      kind: armoured ? "armoured" : "flat-twin-and-cpc",
      insulation: armoured ? "90C-thermosetting" : "70C-thermoplastic",
      material: "copper",
      line: `${cable.line_mm2} mm²`,
      cpc: `${cable.cpc_mm2} mm²`,
      cpcArrangement: "in-cable",
      methods: [cable.ref_method],
      length: `${cable.length_m} m`,
    },
    designCurrent: `${circuit.design_current_A} A`,
    readings: {
      temperature: { shown: `${readings.temperature_C} °C` },
      ...(readings.r1_ohm === undefined ? {} : { r1: ohms(readings.r1_ohm) }),
      ...(readings.rn_ohm === undefined ? {} : { rn: ohms(readings.rn_ohm) }),
      ...(readings.r2_ohm === undefined ? {} : { r2: ohms(readings.r2_ohm) }),
      crossLineNeutral: points(readings.cross_L_N_ohm),
      crossLineCpc: points(readings.cross_L_cpc_ohm),
      r1r2: ohms(readings.R1R2_ohm),
      zs: ohms(readings.Zs_ohm),
      insulationLiveLive: megohms(readings.IR_live_live_Mohm),
      insulationLiveEarth: megohms(readings.IR_live_earth_Mohm),
      insulationVoltage: "500 V",
      polarity: readings.polarity,
    },
  };
}

const worded = (facts: Readonly<Record<string, string | number | boolean>>) =>
  Object.fromEntries(
    Object.entries(facts).map(([name, fact]) => [name, typeof fact === "number" ? String(fact) : fact]),
  );

function adaptSupply(from: CaseFile["supply"]) {
  return {
    earthing: from.system,
    phases: from.phases,
    nominalVoltage: `${from.U0_V} V`,
    public: true,
    device: { standard: from.fuse.standard, rated: `${from.fuse.In_A} A` },
    tails: { size: `${from.tails_mm2} mm²` },
    ...(from.neutral_mm2 === undefined ? {} : { neutral: { size: `${from.neutral_mm2} mm²` } }),
    earthingConductor: {
      size: `${from.earthing_conductor_mm2} mm²`,
      material: "copper",
      arrangement: "separate",
    },
    bonding: from.main_bonding.map(({ to, mm2, R_ohm, incoming, heat_damage }, i) => ({
      id: `b${i}`,
      to: to === "oil line" ? "oil" : to,
      extraneous: incoming !== "plastic",
      ...(mm2 === null ? {} : { connected: true, size: `${mm2} mm²`, material: "copper" }),
      ...(R_ohm === undefined ? {} : { resistance: ohms(R_ohm) }),
      ...(heat_damage === undefined ? {} : { heatDamage: heat_damage }),
    })),
    readings: {
      ze: ohms(from.Ze_ohm),
      ...(from.RA_ohm === undefined ? {} : { ra: ohms(from.RA_ohm) }),
      faultCurrent: { shown: `${from.Ipf_kA} kA` },
    },
  };
}

function adaptBoard(board: CaseFile["boards"][number]) {
  return {
    id: board.id,
    name: board.id,
    location: board.location,
    fedFrom: "supply",
    enclosure: board.enclosure === "steel" ? "metal" : { notKnown: "not-verified", reason: board.enclosure },
    surgeProtection: board.spd ? "fitted" : "not-fitted",
    mainSwitch: { poles: board.main_switch.poles, rated: `${board.main_switch.In_A} A` },
    rcds:
      board.main_rcd === undefined
        ? []
        : [
            {
              id: "main",
              serves: "whole-board",
              // A device of its own with classes A and S: the cases give no standard, and only this one has both.
              standard: "BS EN 61008",
              type: board.main_rcd.type,
              delay: delay(board.main_rcd.class),
              residual: `${board.main_rcd.IdN_mA} mA`,
              readings: {
                atRated: { shown: `${board.main_rcd.trip_ms_at_IdN} ms` },
                button: board.main_rcd.test_button ? "trips" : "does-not-trip",
              },
            },
          ],
    readings: { zdb: ohms(board.Zdb_ohm) },
    circuits: board.circuits.map(adaptCircuit),
  };
}

/** The case as an inspection file of this project. Throws with all issues when it does not parse. */
export function adaptCase(from: CaseFile): InspectionFile {
  const { instrument } = from.inspection;
  const data = {
    format: "good-grounds-inspection",
    version: 2,
    id: from.id,
    invented: true,
    edition: "2018+A4",
    inspectedOn: "2026-10-20",
    brief: {
      client: { name: "Invented client" },
      premises: { address: ["1 Invented Lane"], description: from.scenario },
      use: "dwelling",
      tenure: "owner-occupied",
      nation: "england",
      purpose: "test case",
      records: [],
    },
    visits: [{ date: "2026-10-20" }],
    people: [],
    instruments: [
      {
        id: "meter",
        kind: "multifunction tester",
        serial: "invented",
        accuracy: {
          continuity: accuracy(instrument.continuity),
          loop: accuracy(instrument.loop),
          electrode: accuracy(instrument.loop),
          "fault-current": accuracy(instrument.loop),
          insulation: accuracy(instrument.insulation),
          "rcd-time": "1 % + 1 digit",
        },
      },
    ],
    extent: { covered: "everything", sampling: [] },
    limitations: [],
    supply: adaptSupply(from.supply),
    boards: from.boards.map(adaptBoard),
    inspected: [],
    observations: from.observations.map(({ id, text, circuit, facts }) => ({
      id,
      place: circuit === undefined ? "origin" : `circuit ${circuit}`,
      what: text,
      ...(facts === undefined ? {} : { facts: worded(facts) }),
      ...(circuit === undefined ? {} : { board: "CU", circuit: `c${circuit}` }),
    })),
    photographs: [],
    signatures: [],
  };
  const parsed = parseInspectionData(data);
  if (!parsed.ok)
    throw new Error(`${from.id} does not parse:\n${parsed.issues.map((issue) => JSON.stringify(issue)).join("\n")}`);
  return parsed.file;
}
