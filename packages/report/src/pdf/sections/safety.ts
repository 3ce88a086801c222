import type { InspectionFile } from "@good-grounds/inspection";
import { continuityOf, PRECAUTIONS } from "@good-grounds/inspection";
import type { ReportInput } from "../../input.ts";
import { REPORT } from "../../locales/report-en.ts";
import { SAFETY, type Stage } from "../../locales/safety-en.ts";
import { numbered } from "../../words/observation-number.ts";
import { type Cell, cell, gap, joined } from "../cell.ts";
import { nameOf } from "./frame.ts";

type Precaution = NonNullable<InspectionFile["precautions"]>[number];

/** The stages in two columns that come out about equally long. */
const COLUMNS: readonly (readonly Stage[])[] = [
  ["start", "covers", "insulation"],
  ["live", "leave"],
];

/** Width of the words of a step beside a time alone, and beside a time with a name, mm. */
const BESIDE_TIME = 54;
const BESIDE_NAME = 42;

/** What was done for the safety of people on site, and what of it is not recorded. */
export function safety(input: ReportInput) {
  const { file } = input.installation;
  const taken = file.precautions ?? [];
  const one = onePerson(file, taken);
  return {
    title: SAFETY.title,
    head: SAFETY.head,
    label: one === undefined ? BESIDE_NAME : BESIDE_TIME,
    intro: taken.length === 0 ? cell("") : cell(SAFETY.intro(one === undefined ? "" : SAFETY.by(one.name, one.on))),
    none: taken.length === 0 ? gap(SAFETY.none) : cell(""),
    columns:
      taken.length === 0
        ? []
        : COLUMNS.map((stages) =>
            stages.map((stage) => ({
              title: SAFETY.stage[stage],
              rows: PRECAUTIONS.filter((step) => step.startsWith(`${stage}.`)).map((step) => [
                cell(SAFETY.step[step]),
                stepCell(
                  file,
                  taken.filter((entry) => entry.step === step),
                  one !== undefined,
                ),
              ]),
            })),
          ),
    rows: [
      [SAFETY.earthing, earthing(file)],
      [SAFETY.live, liveTests(input)],
      [SAFETY.danger, dangers(file)],
    ] as const,
  };
}

/** Since when the earthing conductor has been disconnected by the record; undefined where it is connected. */
export function earthingOffSince({ earthingOff = [] }: InspectionFile): string | undefined {
  return earthingOff.find(({ on }) => on === undefined)?.off.at;
}

/** Where one person confirmed everything on one day, their name and the day stand once for all. */
function onePerson(file: InspectionFile, taken: readonly Precaution[]) {
  const [first] = taken;
  if (first?.by === undefined) return undefined;
  const on = first.at.slice(0, 10);
  const same = taken.every(({ by, at }) => by === first.by && at.startsWith(on));
  return same ? { name: nameOf(file, first.by), on } : undefined;
}

function stepCell(file: InspectionFile, entries: readonly Precaution[], short: boolean): Cell {
  if (entries.length === 0) return gap(SAFETY.notRecorded);
  return joined(
    entries.map(({ outcome, at, by }) => {
      const time = short ? at.slice(11, 16) : REPORT.moment(at);
      const who = short ? "" : `, ${by === undefined ? SAFETY.nobody : nameOf(file, by)}`;
      return cell(`${outcome === "done" ? "" : `${SAFETY.doesNotArise}, `}${time}${who}`);
    }),
    "; ",
  );
}

function byWhom(file: InspectionFile, by: string | undefined): string {
  return by === undefined ? "" : SAFETY.person(nameOf(file, by));
}

function earthing(file: InspectionFile): Cell {
  const times = file.earthingOff ?? [];
  const ze = file.supply.readings?.ze;
  const how =
    ze === undefined || "notTaken" in ze
      ? []
      : ze.method !== undefined
        ? [cell(SAFETY.howZe(ze.method))]
        : times.length === 0
          ? [gap(SAFETY.zeUnsaid)]
          : [];
  const told = times.map(({ off, on }): Cell => {
    const began = cell(SAFETY.off(off.at, byWhom(file, off.by)));
    if (on === undefined) return joined([began, gap(SAFETY.stillOff)], "; ");
    const minutes = Math.round((Date.parse(on.at) - Date.parse(off.at)) / 60_000);
    return joined([began, cell(SAFETY.on(on.at, byWhom(file, on.by), minutes))], "; ");
  });
  return joined([...(times.length === 0 ? [gap(SAFETY.noneOff)] : told), ...how], " ");
}

function liveTests({ installation }: ReportInput): Cell {
  const { file, circuits } = installation;
  const said: Cell[] = [];
  const unsaid: string[] = [];
  for (const { path, board, designation, description, readings } of circuits) {
    const [, i, , j] = path as readonly ["boards", number, "circuits", number];
    const circuit = file.boards[i]?.circuits[j];
    const reason = circuit?.liveBeforeContinuity;
    const where = `${board.name}, ${designation} ${description}`;
    if (reason !== undefined) said.push(cell(SAFETY.liveOne(where, reason.at, byWhom(file, reason.by), reason.reason)));
    else if (readings.zs.kind === "measured" && !isProved(circuit)) unsaid.push(where);
  }
  if (unsaid.length > 0) said.push(gap(SAFETY.liveUnsaid(unsaid)));
  if (said.length > 0) return joined(said, " ");
  return circuits.some(({ readings: { zs } }) => zs.kind === "measured")
    ? cell(SAFETY.liveNone)
    : cell(SAFETY.liveNever);
}

/** Whether the readings of a circuit prove its protective conductor, by the same rule as on site. */
function isProved(circuit: InspectionFile["boards"][number]["circuits"][number] | undefined): boolean {
  const { crossLineCpc = [], ...readings } = circuit?.readings ?? {};
  return continuityOf({
    ...(circuit?.shape === undefined ? {} : { shape: circuit.shape }),
    ...(circuit?.cable === undefined ? {} : { cable: circuit.cable }),
    readings: [
      ...Object.entries(readings).map(([name, value]) => ({ name, value })),
      ...crossLineCpc.map(({ reading }) => ({ name: "crossLineCpc", value: reading })),
    ],
  }).proved;
}

function dangers(file: InspectionFile): Cell {
  const found = numbered(file).filter(({ group }) => group === "C1");
  if (found.length === 0) return cell(SAFETY.noDanger);
  return joined(
    found.map(({ number, observation: { madeSafe, untold } }) => {
      if (madeSafe !== undefined) return cell(SAFETY.told(number, madeSafe.told, madeSafe.at));
      return untold === undefined ? gap(SAFETY.tellingUnsaid(number)) : cell(SAFETY.notTold(number, untold));
    }),
    " ",
  );
}
