import type { Evidence, Unit } from "@good-grounds/core";
import { type Conductor, FIELDS_AT, type Supply } from "@good-grounds/inspection";
import type { ReportInput } from "../../input.ts";
import { REPORT } from "../../locales/report-en.ts";
import {
  type Cell,
  cell,
  cellOr,
  factCell,
  fullCell,
  fullFactCell,
  gap,
  joined,
  particulars,
  statedCell,
  valueCell,
} from "../cell.ts";
import { keptWhole } from "../whole.ts";
import { takenBy } from "./taken.ts";

const SUPPLY_READINGS = FIELDS_AT["supply/readings"];
/** The readings of the origin that are quantities. */
type SupplyReading = {
  [K in keyof typeof SUPPLY_READINGS]: Supply[K] extends Evidence<Unit> ? K : never;
}[keyof typeof SUPPLY_READINGS];

type Row = readonly [label: string, cell: Cell];

interface Particulars {
  readonly title: string;
  readonly rows: readonly Row[];
}

/** Characters of the particulars of the origin that are kept on one page. */
const KEPT_WHOLE = 2500;

/** The supply, its earthing and what stands at the origin, in four groups of particulars. */
export function origin(input: ReportInput) {
  const words = REPORT.origin;
  const columns: Readonly<Record<"left" | "right", readonly Particulars[]>> = {
    left: [
      { title: words.supply, rows: supply(input) },
      { title: words.readings, rows: readings(input) },
    ],
    right: [
      { title: words.protection, rows: protection(input) },
      { title: words.earths, rows: earths(input) },
    ],
  };
  return {
    title: REPORT.originTitle,
    head: REPORT.originHead,
    ...keptWhole(columns, KEPT_WHOLE),
    taken: takenBy(input.installation.file.supply, input.installation.file),
    note: input.installation.file.supply.note ?? "",
  };
}

function supply({ installation }: ReportInput): readonly Row[] {
  const { supply: s, file } = installation;
  const words = REPORT.origin;
  const others = file.supply.otherSources ?? [];
  const three = s.phases.kind === "fact" && s.phases.word === "3";
  return [
    [words.earthing, fullFactCell(s.earthing)],
    [words.phases, fullFactCell(s.phases)],
    [words.public, fullFactCell(s.public)],
    [words.nominal, fullCell(s.nominalVoltage)],
    [words.measured, fullCell(s.voltage)],
    [words.polarity, fullFactCell(s.polarity, REPORT.polarityWord)],
    ...(three ? ([[words.sequence, fullFactCell(s.phaseSequence, REPORT.polarityWord)]] as const) : []),
    [
      words.other,
      others.length === 0
        ? cell(words.noOther)
        : joined(
            others.map(({ kind, rated, note }) =>
              joined([cell(kind), ...(rated === undefined ? [] : [rangeCell(rated)]), ...(note ? [cell(note)] : [])]),
            ),
            "; ",
          ),
    ],
  ];
}

/** A stated quantity of the file that has no place among the resolved evidence. */
function rangeCell(stated: Parameters<typeof statedCell>[0] | { readonly from: string; readonly to: string }): Cell {
  if (typeof stated === "object" && "from" in stated) return cell(`${stated.from} to ${stated.to}`);
  return statedCell(stated);
}

function readings({ installation }: ReportInput): readonly Row[] {
  const { supply: s, file } = installation;
  const words = REPORT.origin;
  const method =
    s.faultCurrentMethod.kind === "fact" ? [cell(`${words.faultMethod} ${s.faultCurrentMethod.word}`)] : [];
  const tt = s.earthing.kind !== "fact" || s.earthing.word === "TT" || s.ra.kind !== "not-known";
  const demand = file.supply.maximumDemand;
  return [
    [words.ze, fullCell(s.ze)],
    [words.loop, fullCell(s.lineNeutralLoop)],
    ...(tt ? ([[words.ra, fullCell(s.ra)]] as const) : []),
    [words.faultCurrent, joined([fullCell(s.faultCurrent), ...method])],
    [words.earthFaultCurrent, fullCell(s.earthFaultCurrent)],
    [words.demand, joined([fullCell(s.statedDemand), ...(demand === undefined ? [] : [cell(demand.method)])])],
    ...furtherReadings(s),
  ];
}

/** Readings that have a row of their own above or among the particulars. */
const ARRANGED: ReadonlySet<string> = new Set([
  "ze",
  "ra",
  "lineNeutralLoop",
  "faultCurrent",
  "earthFaultCurrent",
  "voltage",
]);

/** Every other reading of the origin that was taken or is not known for a reason, by the name its field has. */
function furtherReadings(supply: Supply): readonly Row[] {
  return Object.entries(SUPPLY_READINGS).flatMap(([name, { kind, label }]): readonly Row[] => {
    if (kind !== "reading" || ARRANGED.has(name)) return [];
    const reading = supply[name as SupplyReading];
    const isSilent = reading.kind === "not-known" && reading.detail.silence === "absent";
    return isSilent ? [] : [[label, fullCell(reading)]];
  });
}

function protection({ installation }: ReportInput): readonly Row[] {
  const { supply: s, file } = installation;
  const words = REPORT.origin;
  const { device } = s;
  const main = file.supply.mainSwitch;
  const breaking = valueCell(device.breakingCapacity);
  return [
    [
      words.device,
      particulars([
        [REPORT.standard, factCell(device.standard)],
        ...(device.type.kind === "fact" ? [["", factCell(device.type)] as const] : []),
        [REPORT.rating, valueCell(device.rated)],
        [REPORT.breaking, breaking.open ? breaking : cell(REPORT.kiloamperes(breaking.words))],
      ]),
    ],
    [words.tails, sized(s.tails)],
    [
      words.mainSwitch,
      particulars([
        [REPORT.standard, cellOr(main?.standard)],
        [REPORT.poleless, main?.poles === undefined ? cellOr(undefined) : cell(REPORT.poles(main.poles))],
        [REPORT.rating, fullCell(s.mainSwitchRated)],
        ...(main?.voltage === undefined ? [] : [["", rangeCell(main.voltage)] as const]),
      ]),
    ],
  ];
}

/** A conductor by its size and material. */
function sized({ size, material }: Conductor): Cell {
  return particulars([
    [REPORT.size, fullCell(size)],
    [REPORT.material, factCell(material)],
  ]);
}

function earths({ installation }: ReportInput): readonly Row[] {
  const { supply: s, file } = installation;
  const words = REPORT.origin;
  const electrode = file.supply.electrode;
  return [
    [words.earthingConductor, sized(s.earthingConductor)],
    ...(electrode === undefined
      ? []
      : ([[words.electrode, joined([cellOr(electrode.kind), cellOr(electrode.location)])]] as const)),
    ...s.bonding.map((bond): Row => {
      const description = file.supply.bonding.find(({ id }) => id === bond.id)?.description;
      const label = words.bonding((bond.to ?? "").replaceAll("-", " "), description ?? "");
      if (bond.extraneous.kind === "fact" && !bond.extraneous.word) return [label, cell(words.notExtraneous)];
      const resistance = fullCell(bond.resistance);
      const connected = factCell(bond.connected);
      return [
        label,
        joined(
          [
            sized(bond),
            { ...connected, words: `${words.connected}: ${connected.words}` },
            { ...resistance, words: `${words.resistance} ${resistance.words}` },
          ],
          "; ",
        ),
      ];
    }),
    ...(s.bonding.length === 0 ? ([[words.noBonding, gap(REPORT.silence.absent)]] as const) : []),
  ];
}
