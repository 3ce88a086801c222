import type { Finding } from "@good-grounds/core";
import {
  type Board,
  type Circuit,
  FIELDS_AT,
  type InspectionFile,
  type Installation,
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
import { isSilent, recordedLine, recordedRows } from "../recorded.ts";
import { shortNumber } from "./circuit-number.ts";
import { circuitsFurther } from "./circuits-further.ts";
import { deviceMarked, rcdType } from "./device-words.ts";
import { methodsIn } from "./methods.ts";
import { rangeCell } from "./origin.ts";
import { rcdsOf } from "./rcds.ts";
import { barOf, permittedTime, worstVerdict, worstWord } from "./reading-finding.ts";
import { circuitReadings, inUnit } from "./readings.ts";
import { takenBy } from "./taken.ts";
import { thingName } from "./things.ts";

/** What is known of a surge protective device, and of an arc fault detection device. */
const SURGE_DEVICE = FIELDS_AT["things/surgeDevices/*"];
const ARC_DEVICE = FIELDS_AT["things/arcDevices/*"];

/** Every board with its particulars, its circuits and their protection, and their readings. */
export function boards(input: ReportInput, drawings: Drawings) {
  const temperature = input.installation.file.conditions?.conductorTemperature;
  return {
    title: REPORT.circuitsTitle,
    "protection-caption": REPORT.protectionCaption,
    "protection-head": REPORT.protectionHead,
    "readings-caption": REPORT.readingsCaption,
    "rcds-caption": REPORT.rcds.caption,
    "rcds-head": REPORT.rcds.head,
    "further-caption": REPORT.further.caption,
    "further-head": REPORT.further.head,
    "readings-head": REPORT.readingsHead,
    "no-circuits": REPORT.noCircuits,
    note: REPORT.circuitsNote,
    "readings-note": [REPORT.readingsNote, temperatureWords(temperature)].filter((part) => part !== "").join(" "),
    "reasons-title": REPORT.reasonsTitle,
    "methods-title": REPORT.methodsTitle,
    boards: input.installation.boards.map((board, i) => ({
      title: board.name,
      particulars: particularsOf(input, board, i),
      taken: takenBy(input.installation.file.boards[i], input.installation.file),
      protection: board.circuits.map((circuit) => protection(input, circuit, drawings)),
      rcds: rcdsOf(board, input.installation.file.boards[i]),
      further: circuitsFurther(board, input.installation.file.boards[i]?.circuits ?? []),
      "board-methods": methodsIn(input.installation.file.boards[i]?.readings, FIELDS_AT["boards/*/readings"]),
      ...circuitReadings(board, input.installation.file.boards[i]?.circuits ?? []),
    })),
  };
}

function temperatureWords(reading: NonNullable<InspectionFile["conditions"]>["conductorTemperature"]): string {
  if (reading === undefined) return "";
  if ("notTaken" in reading) return REPORT.temperatureNotTaken(reading.reason);
  return REPORT.temperature(
    reading.shown,
    [reading.method, reading.note].flatMap((words) => words ?? []),
  );
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
  const method = isSilent(board.faultCurrentMethod)
    ? []
    : [fullFactCell(board.faultCurrentMethod, REPORT.origin.faultMethod)];
  return [
    [words.from, cell(from)],
    [words.location, statedCell(written?.location)],
    [words.ahead, deviceMarked(board.feeder?.device ?? installation.supply.device)],
    [words.enclosure, statedCell(written?.enclosure)],
    [words.phases, fullFactCell(board.phases)],
    [words.mainSwitch, mainSwitch(board, written)],
    [words.zdb, fullCell(board.zdb)],
    [words.fault, joined([fullCell(board.faultCurrent), ...method])],
    [words.polarity, fullFactCell(board.polarity, REPORT.polarityWord)],
    ...(three ? ([[words.sequence, fullFactCell(board.phaseSequence, REPORT.polarityWord)]] as const) : []),
    [words.surge, surge(installation, board)],
    ...arcs(installation, board),
    ...conditional(board),
    ...insulationTogether(board),
    ...(written?.note === undefined ? [] : ([[words.note, cell(written.note)]] as const)),
  ];
}

/** The rating of the assembly with the device ahead that it is tied to. */
function conditional({ conditionalRating: rating }: Board): readonly (readonly [string, Cell])[] {
  if (rating === undefined) return [];
  const behind = particulars([
    [REPORT.standard, fullFactCell(rating.upstreamStandard)],
    [REPORT.rating, fullCell(rating.upstreamRated)],
  ]);
  const oneMake = isSilent(rating.devicesOfOneMake)
    ? []
    : [joined([cell(`${REPORT.board.oneMake}: `), fullFactCell(rating.devicesOfOneMake)], "")];
  return [
    [
      REPORT.board.conditional,
      joined([fullCell(rating.value), joined([cell(REPORT.board.behind), behind], " "), ...oneMake]),
    ],
  ];
}

/** Arc fault detection devices at the board; nothing where none was recorded. */
function arcs({ things }: Installation, { id }: Board): readonly (readonly [string, Cell])[] {
  const devices = things.ofKind("arcDevices").filter(({ board }) => board === id);
  if (devices.length === 0) return [];
  return [
    [
      REPORT.board.arc,
      joined(
        devices.map((one) => joined([cell(thingName(one)), recordedLine(recordedRows(ARC_DEVICE, one.state))], ": ")),
        "; ",
      ),
    ],
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

function mainSwitch(
  { mainSwitchRated, mainSwitchFitted }: Board,
  written: InspectionFile["boards"][number] | undefined,
): Cell {
  const { standard, poles, voltage, fitted } = written?.mainSwitch ?? {};
  return particulars([
    ...(fitted === undefined
      ? []
      : [["", joined([cell(`${REPORT.origin.fitted}: `), fullFactCell(mainSwitchFitted)], "")] as const]),
    ...(standard === undefined ? [] : [["", cell(standard)] as const]),
    ...(poles === undefined ? [] : [["", cell(REPORT.poles(poles))] as const]),
    [REPORT.rating, fullCell(mainSwitchRated)],
    ...(voltage === undefined ? [] : [["", rangeCell(voltage)] as const]),
  ]);
}

/** Surge protective devices of the board: whether there is one, and what is known of each. */
function surge({ things }: Installation, { id }: Board): Cell {
  const devices = things.at("surgeDevices", { board: id });
  if (devices.length === 0) return statedCell(undefined);
  return joined(devices.map(({ state }) => surgeDevice(state)));
}

function surgeDevice(state: Thing<"surgeDevices">["state"]): Cell {
  const { fitted, type } = state;
  if (fitted.kind !== "fact") return fullFactCell(fitted);
  const there = cell(REPORT.board.surgeWord[fitted.word ? "fitted" : "not-fitted"]);
  if (!fitted.word) return there;
  const rest = recordedRows(SURGE_DEVICE, state, ["fitted", "type"]);
  return joined([
    there,
    ...(isSilent(type) ? [] : [type.kind === "fact" ? cell(REPORT.board.surgeType(type.word)) : fullFactCell(type)]),
    ...(rest.length === 0 ? [] : [recordedLine(rest)]),
  ]);
}

function protection({ installation, weighing }: ReportInput, circuit: Circuit, drawings: Drawings) {
  const found = weighing.circuits[installation.circuits.indexOf(circuit)] ?? [];
  const worst = worstVerdict(found);
  const loop = found.find(({ check }) => check === "maximum-zs");
  const bar = loop === undefined ? undefined : barOf(loop.judgement);
  const shape = factCell(circuit.shape);
  return {
    no: cell(shortNumber(circuit.designation)),
    name: cell(circuit.description),
    serves: circuit.points === undefined ? shape : joined([shape, cell(REPORT.points(circuit.points))]),
    wiring: wiring(circuit),
    method: methods(circuit),
    sizes: sizes(circuit),
    phases: phases(circuit),
    device: deviceMarked(circuit.device),
    rcd: rcd(circuit),
    within: within(loop),
    bar: bar === undefined ? "" : drawings.add(bar.svg),
    "bar-words": bar?.words ?? "",
    limit: bar === undefined ? gap(VERDICT_SHORT[loop?.judgement.verdict ?? "not-known"]) : cell(bar.limit),
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
    [cable.line, ...(isSilent(cable.neutral) ? [] : [cable.neutral]), cable.cpc].map((size) =>
      inUnit(valueCell(size), "mm²"),
    ),
    " / ",
  );
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
        ]),
      ),
      "; ",
    );
  }
  return residual.present.kind === "fact" ? cell(REPORT.noRcd) : fullFactCell(residual.present);
}

/** The phases of a circuit where they are recorded; a circuit of a board with one phase has that. */
function phases({ phases: own, board }: Circuit): Cell {
  return isSilent(own) ? factCell(board.phases) : factCell(own);
}

function within(loop: Finding | undefined): Cell {
  const time = loop === undefined ? undefined : permittedTime(loop.judgement);
  return time === undefined ? gap("–") : cell(REPORT.seconds(time.value));
}
