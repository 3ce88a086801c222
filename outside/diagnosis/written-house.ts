import {
  type InspectionFile,
  type Installation,
  parseInspectionData,
  resolveInstallation,
} from "@good-grounds/inspection";

/** A circuit as an inspector writes it down. Values in Ω, MΩ, metres and mm² as on the display, with their digits. */
export interface WrittenCircuit {
  description: string;
  load: string;
  shape?: "ring" | "radial" | undefined;
  /** "line/protective", mm². */
  cable: string;
  kind?: string | undefined;
  length: string;
  r1r2?: string | undefined;
  zs?: string | undefined;
  r1?: string | undefined;
  rn?: string | undefined;
  r2?: string | undefined;
  /** Cross-connected readings at the points in their order, line to neutral and line to protective conductor. */
  lineNeutral?: string | undefined;
  lineCpc?: string | undefined;
  toEarth?: string | undefined;
  betweenLive?: string | undefined;
  neutrals?: string | undefined;
  /** Operating time of the circuit's own RCD, ms. */
  trips?: string | undefined;
  temperature?: string | undefined;
  polarity?: string | undefined;
  /** Instrument of the loop test, where it is another. */
  loopBy?: string | undefined;
  note?: string | undefined;
}

/** A house as written down on the day. */
export interface WrittenHouse {
  earthing: string;
  ze: string;
  zdb?: string;
  ra?: string;
  current?: string;
  /** At the board, kA. */
  boardCurrent?: string;
  earthCurrent?: string;
  lineNeutralLoop?: string;
  polarity?: string;
  accuracy: Record<string, string> | undefined;
  day: string;
  circuits: WrittenCircuit[];
  /** A board behind one of the circuits, with its own. */
  shed?: { fedBy: number; zdb: string; circuits: WrittenCircuit[] };
}

/**
 * A sound house, reckoned by hand at 20 °C with 18.1, 12.1, 7.41, 4.61, 3.08 and 1.83 mΩ/m for 1 to 10 mm², and each
 * reading a digit or so beside what comes out.
 */
export function soundHouse(): WrittenHouse {
  const circuit = (
    description: string,
    load: string,
    cable: string,
    length: string,
    r1r2: string,
    zs: string,
    toEarth: string,
    trips: string,
  ): WrittenCircuit => ({ description, load, cable, length, r1r2, zs, toEarth, betweenLive: ">999", trips });
  return {
    earthing: "TN-C-S",
    ze: "0.21",
    zdb: "0.22",
    accuracy: SHOWN,
    day: "2026-10-20",
    circuits: [
      {
        ...circuit("sockets", "socket-outlets", "2.5/1.5", "58", "0.28", "0.51", "312", "22.4"),
        shape: "ring",
        r1: "0.43",
        rn: "0.43",
        r2: "0.70",
        lineNeutral: "0.21 0.22 0.22 0.21 0.22 0.21 0.21 0.22",
        lineCpc: "0.27 0.28 0.28 0.29 0.28 0.28 0.28 0.27",
      },
      circuit("lights upstairs", "lighting", "1.5/1", "24", "0.73", "0.96", "421", "27.1"),
      circuit("lights downstairs", "lighting", "1.5/1", "30", "0.92", "1.12", "268", "25.8"),
      circuit("cooker", "cooker", "6/2.5", "11", "0.11", "0.34", ">999", "19.6"),
      circuit("shower", "shower", "10/4", "14", "0.09", "0.31", ">999", "23.9"),
      circuit("immersion heater", "water-heater", "2.5/1.5", "16", "0.32", "0.53", "187", "28.3"),
      circuit("boiler", "water-heater", "1.5/1", "9", "0.27", "0.48", "640", "21.2"),
      circuit("garage sockets", "socket-outlets", "2.5/1.5", "28", "0.55", "0.78", "530", "26.5"),
    ],
  };
}

/** A house on an electrode, with the same wiring. */
export function houseOnElectrode(): WrittenHouse {
  const house = soundHouse();
  const loops = ["85.6", "86.4", "85.1", "84.7", "85.9", "86.2", "84.4", "86.8"];
  for (const [i, circuit] of house.circuits.entries()) circuit.zs = loops[i] ?? "85.0";
  return { ...house, earthing: "TT", ze: "85.1", zdb: "84.9", ra: "83.7" };
}

/** What the maker states of an ordinary tester. */
const SHOWN: Record<string, string> = {
  continuity: "2 % + 2 digits",
  loop: "3 % + 3 digits",
  electrode: "3 % + 3 digits",
  "fault-current": "5 % + 3 digits",
  insulation: "3 % + 2 digits",
  "rcd-time": "1 % + 1 digit",
};

const reading = (shown: string | undefined, unit: string, instrument = "meter") =>
  shown === undefined ? undefined : { shown: `${shown} ${unit}`, with: instrument };

/** "28", or "20..40" where it is known as a range. */
function lengthOf(written: string) {
  const [from, to] = written.split("..");
  return to === undefined ? `${from} m` : { from: `${from} m`, to: `${to} m` };
}

function circuitData(one: WrittenCircuit, i: number, prefix: string) {
  const [line, cpc] = one.cable.split("/");
  const armoured = one.kind === "armoured";
  const points = (list: string | undefined) =>
    list?.split(" ").map((value, k) => ({ point: `socket ${k + 1}`, reading: reading(value, "Ω") }));
  return {
    id: `${prefix}${i + 1}`,
    designation: String(i + 1),
    description: one.description,
    shape: one.shape ?? "radial",
    load: one.load,
    phases: 1,
    device: { standard: "BS EN 61009", type: "B", rated: "32 A" },
    rcd: {
      own: {
        standard: "BS EN 61009",
        type: "A",
        delay: "general",
        residual: "30 mA",
        readings: { atRated: reading(one.trips, "ms") },
      },
    },
    cable: {
      kind: one.kind ?? "flat-twin-and-cpc",
      insulation: armoured ? "90C-thermosetting" : "70C-thermoplastic",
      material: "copper",
      line: `${line} mm²`,
      cpc: `${cpc} mm²`,
      cpcArrangement: "in-cable",
      length: lengthOf(one.length),
      lengthFound: "taped",
    },
    readings: {
      temperature: reading(one.temperature ?? "20", "°C"),
      r1: reading(one.r1, "Ω"),
      rn: reading(one.rn, "Ω"),
      r2: reading(one.r2, "Ω"),
      crossLineNeutral: points(one.lineNeutral),
      crossLineCpc: points(one.lineCpc),
      r1r2: reading(one.r1r2, "Ω"),
      zs: reading(one.zs, "Ω", one.loopBy),
      insulationLiveEarth: reading(one.toEarth, "MΩ"),
      insulationLiveLive: reading(one.betweenLive, "MΩ"),
      insulationBetweenNeutrals: reading(one.neutrals, "MΩ"),
      polarity: one.polarity ?? "correct",
    },
    note: one.note,
  };
}

function supplyData(house: WrittenHouse) {
  return {
    earthing: house.earthing,
    phases: 1,
    nominalVoltage: "230 V",
    public: true,
    device: { standard: "BS 1361", type: "II", rated: "80 A" },
    bonding: [],
    readings: {
      ze: reading(house.ze, "Ω"),
      ra: reading(house.ra, "Ω"),
      lineNeutralLoop: reading(house.lineNeutralLoop, "Ω"),
      faultCurrent: reading(house.current, "kA"),
      earthFaultCurrent: reading(house.earthCurrent, "kA"),
      polarity: house.polarity,
    },
  };
}

function boardsData(house: WrittenHouse) {
  const { shed } = house;
  return [
    {
      id: "house",
      name: "consumer unit",
      fedFrom: "supply",
      rcds: [],
      readings: { zdb: reading(house.zdb, "Ω"), faultCurrent: reading(house.boardCurrent, "kA") },
      circuits: house.circuits.map((one, i) => circuitData(one, i, "c")),
    },
    ...(shed === undefined
      ? []
      : [
          {
            id: "shed",
            name: "shed board",
            fedFrom: { board: "house", circuit: `c${shed.fedBy}` },
            rcds: [],
            readings: { zdb: reading(shed.zdb, "Ω") },
            circuits: shed.circuits.map((one, i) => circuitData(one, i, "s")),
          },
        ]),
  ];
}

/** The house as an inspection file. */
export function fileOf(house: WrittenHouse): InspectionFile {
  const data = {
    format: "good-grounds-inspection",
    version: 3,
    id: `written-by-hand-${house.day}`,
    invented: true,
    edition: "2018+A4",
    inspectedOn: house.day,
    brief: {
      client: { name: "Invented client" },
      premises: { address: ["1 Invented Lane"], description: "a house" },
      use: "dwelling",
      tenure: "owner-occupied",
      nation: "england",
      purpose: "test",
      records: [],
    },
    visits: [{ date: house.day }],
    people: [],
    instruments: [
      { id: "meter", kind: "multifunction tester", serial: "invented", accuracy: house.accuracy },
      ...(house.circuits.some(({ loopBy }) => loopBy !== undefined)
        ? [{ id: "second", kind: "multifunction tester", serial: "invented-2", accuracy: house.accuracy }]
        : []),
    ],
    extent: { covered: "everything", sampling: [] },
    limitations: [],
    supply: supplyData(house),
    boards: boardsData(house),
    inspected: [],
    observations: [],
    photographs: [],
    signatures: [],
  };
  // Members that are not there are left out, as in a file.
  const parsed = parseInspectionData(JSON.parse(JSON.stringify(data)));
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues.slice(0, 3)));
  return parsed.file;
}

export const installationOf = (house: WrittenHouse): Installation => resolveInstallation(fileOf(house));
