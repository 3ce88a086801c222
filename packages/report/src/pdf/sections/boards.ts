import type { Finding } from "@good-grounds/core";
import {
  type Board,
  type Circuit,
  type Field,
  type InspectionFile,
  type Installation,
  type ResidualDevice,
  THING_KINDS,
  type Thing,
} from "@good-grounds/inspection";
import type { ReportInput } from "../../input.ts";
import { VERDICT_SHORT } from "../../locales/labels.ts";
import { MISFITS } from "../../locales/misfits-en.ts";
import { REPORT } from "../../locales/report-en.ts";
import {
  type Cell,
  cell,
  factCell,
  fullCell,
  fullFactCell,
  gap,
  joined,
  particulars,
  statedCell,
  valueCell,
} from "../cell.ts";
import type { Drawings } from "../drawings.ts";
import { shortNumber } from "./circuit-number.ts";
import { barOf, figuresFromMemory, permittedTime, worstVerdict, worstWord } from "./reading-finding.ts";
import { circuitReadings, inUnit } from "./readings.ts";
import { takenBy } from "./taken.ts";

/** Labels of what is known of a surge protective device are those of its fields. */
const SURGE_DEVICE = THING_KINDS.surgeDevices.fields;

/** Every board with its particulars, its circuits and their protection, and their readings. */
export function boards(input: ReportInput, drawings: Drawings) {
  const temperature = input.installation.file.conditions?.conductorTemperature;
  return {
    title: REPORT.circuitsTitle,
    "protection-caption": REPORT.protectionCaption,
    "protection-head": REPORT.protectionHead,
    "readings-caption": REPORT.readingsCaption,
    "readings-head": REPORT.readingsHead,
    "no-circuits": REPORT.noCircuits,
    note: REPORT.circuitsNote,
    "readings-note": [
      REPORT.readingsNote,
      temperature === undefined || "notTaken" in temperature ? "" : REPORT.temperature(temperature.shown),
    ]
      .filter((part) => part !== "")
      .join(" "),
    "reasons-title": REPORT.reasonsTitle,
    "methods-title": REPORT.methodsTitle,
    boards: input.installation.boards.map((board, i) => ({
      title: board.name,
      particulars: particularsOf(input, board, i),
      taken: takenBy(input.installation.file.boards[i], input.installation.file),
      protection: board.circuits.map((circuit) => protection(input, circuit, drawings)),
      ...circuitReadings(board, input.installation.file.boards[i]?.circuits ?? []),
    })),
  };
}

function particularsOf(
  { installation }: ReportInput,
  board: Board,
  index: number,
): readonly (readonly [string, Cell])[] {
  const words = REPORT.board;
  const written = installation.file.boards[index];
  const from =
    board.feeder === undefined
      ? REPORT.fromSupply
      : `${board.feeder.board.name}, ${REPORT.inCircuit(board.feeder.designation, "")}`.trim();
  const three = board.phases.kind === "fact" && board.phases.word === "3";
  const conditional = board.conditionalRating;
  return [
    [words.from, cell(from)],
    [words.location, statedCell(written?.location)],
    [words.enclosure, statedCell(written?.enclosure)],
    [words.phases, factCell(board.phases)],
    [words.mainSwitch, mainSwitch(board, written)],
    [words.zdb, fullCell(board.zdb)],
    [words.fault, fullCell(board.faultCurrent)],
    [words.polarity, fullFactCell(board.polarity, REPORT.polarityWord)],
    ...(three ? ([[words.sequence, fullFactCell(board.phaseSequence, REPORT.polarityWord)]] as const) : []),
    [words.surge, surge(installation, board)],
    ...(conditional === undefined ? [] : ([[words.conditional, fullCell(conditional.value)]] as const)),
    ...insulationTogether(board),
    ...board.rcds.map((rcd) => [words.rcd(rcd.id ?? ""), rcdParticulars(rcd)] as const),
    ...(written?.note === undefined ? [] : ([[words.note, cell(written.note)]] as const)),
  ];
}

/** Readings of the whole board, where any were taken. */
function insulationTogether({ insulationLiveLive, insulationLiveEarth }: Board): readonly (readonly [string, Cell])[] {
  const { liveLive, liveEarth } = MISFITS.boardInsulation;
  return (
    [
      [liveLive, insulationLiveLive],
      [liveEarth, insulationLiveEarth],
    ] as const
  ).flatMap(([name, reading]) =>
    reading.kind === "not-known" && reading.detail.silence === "absent" ? [] : [[name, fullCell(reading)] as const],
  );
}

function mainSwitch({ mainSwitchRated }: Board, written: InspectionFile["boards"][number] | undefined): Cell {
  const { standard, poles } = written?.mainSwitch ?? {};
  return particulars([
    ...(standard === undefined ? [] : [["", cell(standard)] as const]),
    ...(poles === undefined ? [] : [["", cell(REPORT.poles(poles))] as const]),
    [REPORT.rating, fullCell(mainSwitchRated)],
  ]);
}

/** Surge protective devices of the board: whether there is one, and what is known of each. */
function surge({ things }: Installation, { id }: Board): Cell {
  const devices = things.at("surgeDevices", { board: id });
  if (devices.length === 0) return statedCell(undefined);
  return joined(devices.map(({ state }) => surgeDevice(state)));
}

function surgeDevice({ fitted, type, indicator }: Thing<"surgeDevices">["state"]): Cell {
  if (fitted.kind !== "fact") return fullFactCell(fitted);
  const there = cell(REPORT.board.surgeWord[fitted.word ? "fitted" : "not-fitted"]);
  if (!fitted.word) return there;
  return joined([
    there,
    ...(type.kind === "fact" ? [cell(REPORT.board.surgeType(type.word))] : []),
    ...(indicator.kind === "fact" ? [cell(labelled(SURGE_DEVICE.indicator, indicator.word))] : []),
  ]);
}

function labelled({ label, words }: Field, word: string): string {
  return `${label.toLowerCase()} ${words?.[word] ?? word}`;
}

function rcdParticulars(rcd: ResidualDevice): Cell {
  return joined([
    particulars([
      [REPORT.standard, factCell(rcd.standard)],
      [REPORT.type, rcdType(rcd)],
      [REPORT.rating, valueCell(rcd.rated)],
      [REPORT.residual, valueCell(rcd.residual)],
    ]),
    ...delayed(rcd),
    ...(rcd.servesWholeBoard ? [cell(REPORT.board.wholeBoard)] : []),
  ]);
}

function rcdType({ type }: ResidualDevice): Cell {
  return type.kind === "fact" ? cell(REPORT.rcdType(type.word)) : factCell(type);
}

/** A time delay, where it is marked; most have none. */
function delayed({ delay }: ResidualDevice): readonly Cell[] {
  return delay.kind === "fact" && delay.word !== "general" ? [cell(REPORT.rcdDelay(delay.word))] : [];
}

function protection({ installation, weighing }: ReportInput, circuit: Circuit, drawings: Drawings) {
  const found = weighing.circuits[installation.circuits.indexOf(circuit)] ?? [];
  const worst = worstVerdict(found);
  const loop = found.find(({ check }) => check === "maximum-zs");
  const bar = loop === undefined ? undefined : barOf(loop.judgement);
  const memory = loop !== undefined && figuresFromMemory(loop.judgement).length > 0;
  const shape = factCell(circuit.shape);
  return {
    no: cell(shortNumber(circuit.designation)),
    name: cell(circuit.description),
    serves: circuit.points === undefined ? shape : joined([shape, cell(REPORT.points(circuit.points))]),
    wiring: wiring(circuit),
    method: methods(circuit),
    sizes: sizes(circuit),
    device: device(circuit),
    rcd: rcd(circuit),
    within: within(loop),
    bar: bar === undefined ? "" : drawings.add(bar.svg),
    "bar-words": bar?.words ?? "",
    limit: bar === undefined ? gap(VERDICT_SHORT[loop?.judgement.verdict ?? "not-known"]) : cell(bar.limit),
    memory: memory ? "†" : "",
    worst: { words: worstWord(found), open: worst === "not-known" || worst === "too-near" },
    heavy: worst === "not-met",
  };
}

function wiring({ cable }: Circuit): Cell {
  const parts = [factCell(cable.kind)];
  if (cable.material.kind === "fact" && cable.material.word !== "copper") parts.push(factCell(cable.material));
  return spelt(joined(parts));
}

function spelt({ words, open, parts }: Cell): Cell {
  return { words: words.replaceAll("-", " "), open, ...(parts === undefined ? {} : { parts: parts.map(spelt) }) };
}

function methods({ cable }: Circuit): Cell {
  if (cable.methods.length === 0) return gap(REPORT.silence.absent);
  return joined(
    cable.methods.map((method) => factCell(method)),
    " / ",
  );
}

function sizes({ cable }: Circuit): Cell {
  return joined(
    [cable.line, cable.cpc].map((size) => inUnit(valueCell(size), "mm²")),
    " / ",
  );
}

function device({ device: { standard, type, rated, breakingCapacity } }: Circuit): Cell {
  return particulars([
    [REPORT.standard, factCell(standard)],
    ...(type.kind === "fact" ? [["", factCell(type)] as const] : []),
    [REPORT.rating, valueCell(rated)],
    [REPORT.breaking, valueCell(breakingCapacity)],
  ]);
}

/** The RCD nearest to the circuit; a circuit behind several names each. */
function rcd({ residual }: Circuit): Cell {
  if (residual.devices.length > 0) {
    return joined(
      residual.devices.map((one) =>
        joined([
          cell(one.id === undefined ? REPORT.ownRcd : REPORT.boardRcd(one.id)),
          particulars([
            [REPORT.residual, valueCell(one.residual)],
            [REPORT.type, rcdType(one)],
          ]),
          ...delayed(one),
        ]),
      ),
      "; ",
    );
  }
  return residual.present.kind === "fact" ? cell(REPORT.noRcd) : fullFactCell(residual.present);
}

function within(loop: Finding | undefined): Cell {
  const time = loop === undefined ? undefined : permittedTime(loop.judgement);
  return time === undefined ? gap("–") : cell(REPORT.seconds(time.value));
}
