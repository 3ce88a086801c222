import { Chance } from "./chance.ts";
import { Clock, type Step } from "./clock.ts";
import { entryOf } from "./entry.ts";
import type { TrueBoard, TrueCircuit, TrueInstallation } from "./installation.ts";
import { Instrument } from "./instrument.ts";
import { type Loop, readingsOf, type TrueReadings } from "./physics.ts";

/** The id of the instrument and of the person in the files. */
export const METER_ID = "mft";
const INSPECTOR_ID = "inspector";

const NOMINAL_VOLTS = 230;

interface Tested {
  readonly board: TrueBoard;
  readonly loop: Loop;
  readonly circuits: readonly { readonly circuit: TrueCircuit; readonly truth: TrueReadings }[];
}

/**
 * Tests an installation the way an inspector does: the origin live, then everything dead, then, after the accessories,
 * everything live, each visit in turn. Gives the readings of the origin and the boards as the file has them.
 */
export function inspect(installation: TrueInstallation) {
  const chance = new Chance(installation.seed);
  const instrument = new Instrument(chance);
  const tested = trueReadings(installation, chance);
  const origin: Record<string, unknown> = {};
  const boards = new Map<string, { readonly id: string }>();
  for (const [i, { day, testsFrom }] of installation.visits.entries()) {
    const clock = new Clock(day, testsFrom, chance);
    const read = (step: Step, shown: string, method?: string) => ({
      shown,
      at: clock.after(step),
      by: INSPECTOR_ID,
      with: METER_ID,
      ...(method === undefined ? {} : { method }),
    });
    if (i === 0) Object.assign(origin, atOrigin(installation, instrument, read));
    clock.after("isolate");
    if (i === 0) Object.assign(origin, isolatedOrigin(installation, instrument, read));
    const here = tested.filter(({ board }) => (board.visit ?? 0) === i);
    const dead = here.map(({ circuits }) =>
      circuits.map(({ circuit, truth }) => deadTests(circuit, truth, chance, instrument, read)),
    );
    clock.after("accessories");
    clock.after("energise");
    for (const [j, { board, loop, circuits }] of here.entries()) {
      const live = liveBoard(board, loop, installation, chance, instrument, read);
      const entries = circuits.map(({ circuit, truth }, k) =>
        entryOf(circuit, { ...dead[j]?.[k], ...liveTests(circuit, truth, instrument, read) }, () =>
          read("residual", instrument.rcdTime(chance.between(0.018, 0.034))),
        ),
      );
      const whole = { ...live, circuits: entries };
      boards.set(board.id, whole);
    }
  }
  return { origin, boards: installation.boards.flatMap(({ id }) => boards.get(id) ?? []) };
}

type Read = (step: Step, shown: string, method?: string) => object;

/** The truth of every circuit, boards in the order in which they feed each other. */
function trueReadings({ boards, celsius, ze, lineNeutral }: TrueInstallation, chance: Chance): readonly Tested[] {
  const feeders = new Map<string, Loop>();
  return boards.map((board) => {
    const { fedFrom } = board;
    const loop =
      fedFrom === "supply" ? { earth: ze, neutral: lineNeutral } : feeders.get(`${fedFrom.board} ${fedFrom.circuit}`);
    if (loop === undefined) throw new Error(`${board.id} is fed from a circuit that comes later`);
    const circuits = board.circuits.map((circuit) => {
      const truth = readingsOf(circuit, loop, celsius, chance);
      if (circuit.shape === "distribution") feeders.set(`${board.id} ${circuit.id}`, truth.atEnd);
      return { circuit, truth };
    });
    return { board, loop, circuits };
  });
}

function atOrigin({ lineNeutral, volts, phases }: TrueInstallation, instrument: Instrument, read: Read) {
  return {
    voltage: read("origin", instrument.volts(volts)),
    lineNeutralLoop: read("origin", instrument.loop(lineNeutral)),
    faultCurrent: read("origin", instrument.faultCurrent(NOMINAL_VOLTS / lineNeutral)),
    ...(phases === 3 ? { faultCurrentMethod: "line-neutral", phaseSequence: "correct" } : {}),
    polarity: "correct",
  };
}

function isolatedOrigin({ ze, electrode }: TrueInstallation, instrument: Instrument, read: Read) {
  return {
    ze: read("origin", instrument.loop(ze), "earthing conductor off, installation isolated"),
    ...(electrode === undefined
      ? {}
      : { ra: read("origin", instrument.loop(electrode), "three leads, earthing conductor off") }),
  };
}

function deadTests(circuit: TrueCircuit, truth: TrueReadings, chance: Chance, instrument: Instrument, read: Read) {
  const { untested, insulationUntested } = circuit;
  if (untested !== undefined) {
    const not = { notTaken: "limited", reason: untested };
    return { r1r2: not, insulationLiveLive: not, insulationLiveEarth: not };
  }
  const { ring } = truth;
  const ohms = (value: number) => read("continuity", instrument.continuity(value));
  const cross = (key: "lineNeutral" | "lineCpc") =>
    (ring?.points ?? []).map((point, i) => ({
      point: `socket ${i + 1}`,
      reading: read("ringPoint", instrument.continuity(point[key])),
    }));
  const insulation = () => {
    if (insulationUntested !== undefined) return { notTaken: "limited", reason: insulationUntested };
    // Sound insulation is spread over decades: lognormal about 600 MΩ.
    const ohm = circuit.insulation ?? Math.exp(chance.normal(Math.log(600e6), 0.6));
    return read("insulation", instrument.insulation(ohm));
  };
  return {
    ...(ring === undefined
      ? {}
      : {
          r1: ohms(ring.r1),
          rn: ohms(ring.rn),
          r2: ohms(ring.r2),
          crossLineNeutral: cross("lineNeutral"),
          crossLineCpc: cross("lineCpc"),
        }),
    r1r2: ohms(truth.r1r2),
    insulationVoltage: "500 V",
    insulationLiveLive: insulation(),
    insulationLiveEarth: insulation(),
  };
}

function liveTests({ untested }: TrueCircuit, truth: TrueReadings, instrument: Instrument, read: Read) {
  if (untested !== undefined) {
    return {
      zs: { notTaken: "limited", reason: untested },
      polarity: { notKnown: "limited", reason: untested },
    };
  }
  return { polarity: "correct", zs: read("loop", instrument.loop(truth.zs)) };
}

function liveBoard(
  board: TrueBoard,
  loop: Loop,
  installation: TrueInstallation,
  chance: Chance,
  instrument: Instrument,
  read: Read,
) {
  const phases = board.phases ?? installation.phases;
  return {
    id: board.id,
    name: board.name,
    location: board.location,
    fedFrom: board.fedFrom,
    phases,
    enclosure: board.enclosure,
    mainSwitch: { poles: phases === 3 ? 4 : 2, rated: `${board.mainSwitch} A` },
    rcds: (board.rcds ?? []).map(({ id, serves, residual, delay, seconds }) => ({
      id,
      serves,
      standard: "BS EN 61008",
      type: "A",
      delay,
      residual: `${residual} mA`,
      readings: {
        atRated: read(
          "residual",
          instrument.rcdTime(seconds ?? (delay === "S" ? chance.between(0.18, 0.3) : chance.between(0.018, 0.034))),
        ),
        button: "trips",
      },
    })),
    readings: {
      zdb: read("loop", instrument.loop(loop.earth)),
      faultCurrent: read("loop", instrument.faultCurrent(NOMINAL_VOLTS / Math.min(loop.neutral, loop.earth))),
      ...(installation.phases === 3 ? { faultCurrentMethod: "line-neutral" } : {}),
      polarity: "correct",
      ...(phases === 3 ? { phaseSequence: "correct" } : {}),
    },
  };
}
