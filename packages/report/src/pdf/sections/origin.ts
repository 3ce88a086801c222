import { type Evidence, type Ground, isKnown, nodesOf, type Silence, TERM, type Unit } from "@good-grounds/core";
import {
  type Board,
  type BondingConductor,
  type Conductor,
  FIELDS_AT,
  type FieldSet,
  type InspectionFile,
  type ItemId,
  type Supply,
} from "@good-grounds/inspection";
import type { ReportInput } from "../../input.ts";
import { REPORT } from "../../locales/report-en.ts";
import { valueWords } from "../../words/figure.ts";
import {
  type AnyFact,
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
import { isSilent, type Row, readingCell, recordedLine, recordedRows } from "../recorded.ts";
import { keptWhole } from "../whole.ts";
import { deviceFurther, rcdMarked } from "./device-words.ts";
import { supplyMethods } from "./methods.ts";
import { capitalised } from "./observation-order.ts";
import { takenBy } from "./taken.ts";

const SUPPLY_READINGS = FIELDS_AT["supply/readings"];
/** The readings of the origin that are quantities. */
type SupplyReading = {
  [K in keyof typeof SUPPLY_READINGS]: Supply[K] extends Evidence<Unit> ? K : never;
}[keyof typeof SUPPLY_READINGS];

interface Particulars {
  readonly title: string;
  readonly rows: readonly Row[];
}

/** Characters of the particulars of the origin that are kept on one page. */
const KEPT_WHOLE = 2500;

/** The supply, its earthing, what stands at the origin, and bonding part by part. */
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
    bonding: bonding(input),
    methods: supplyMethods(input.installation.file),
    "methods-title": REPORT.methodsTitle,
    taken: takenBy(input.installation.file.supply, input.installation.file),
    note: input.installation.file.supply.note ?? "",
  };
}

function supply({ installation }: ReportInput): readonly Row[] {
  const { supply: s, file } = installation;
  const words = REPORT.origin;
  const { liveConductors, current, frequency, lineVoltage } = file.supply;
  const three = s.phases.kind === "fact" && s.phases.word === "3";
  return [
    [words.earthing, fullFactCell(s.earthing)],
    [words.phases, fullFactCell(s.phases)],
    [words.live, statedCell(liveConductors)],
    [words.current, typeof current === "string" ? cell(words.currents[current]) : statedCell(current)],
    [words.frequency, rangeCell(frequency)],
    [words.public, fullFactCell(s.public)],
    [words.nominal, fullCell(s.nominalVoltage)],
    ...(three || lineVoltage !== undefined ? ([[words.lineVoltage, rangeCell(lineVoltage)]] as const) : []),
    [words.measured, fullCell(s.voltage)],
    [words.polarity, fullFactCell(s.polarity, REPORT.polarityWord)],
    ...(three ? ([[words.sequence, fullFactCell(s.phaseSequence, REPORT.polarityWord)]] as const) : []),
    ...recordedIn(words.neutral, recordedRows(FIELDS_AT["supply/neutral"], s.neutral)),
    [words.other, otherSources(installation)],
  ];
}

/** What feeds the installation beside the network, each with its notice. */
function otherSources({ supply: { otherSources: resolved }, file }: ReportInput["installation"]): Cell {
  const others = file.supply.otherSources ?? [];
  if (others.length === 0) return cell(REPORT.origin.noOther);
  return joined(
    others.map(({ kind, rated, note }, i) =>
      joined([
        cell(kind.replaceAll("-", " ")),
        ...(rated === undefined ? [] : [rangeCell(rated)]),
        ...labelled(REPORT.origin.notice, resolved[i]?.notice),
        ...(note ? [cell(note)] : []),
      ]),
    ),
    "; ",
  );
}

/** A fact behind its name; nothing where nobody recorded it. */
function labelled(name: string, fact: AnyFact | undefined): readonly Cell[] {
  return fact === undefined || isSilent(fact) ? [] : [joined([cell(`${name}: `), fullFactCell(fact)], "")];
}

/** What was recorded of something, in one row; none where nothing was. */
function recordedIn(label: string, rows: readonly Row[]): readonly Row[] {
  return rows.length === 0 ? [] : [[label, recordedLine(rows)]];
}

/** A stated quantity of the file that has no place among the resolved evidence. */
export function rangeCell(
  stated: Parameters<typeof statedCell>[0] | { readonly from: string; readonly to: string },
): Cell {
  if (typeof stated === "object" && "from" in stated) return cell(`${stated.from} to ${stated.to}`);
  return statedCell(stated);
}

function readings(input: ReportInput): readonly Row[] {
  const { supply: s, file } = input.installation;
  const words = REPORT.origin;
  const method = isSilent(s.faultCurrentMethod) ? [] : [fullFactCell(s.faultCurrentMethod, words.faultMethod)];
  const tt = s.earthing.kind !== "fact" || s.earthing.word === "TT" || s.ra.kind !== "not-known";
  const demand = file.supply.maximumDemand;
  return [
    [words.ze, fullCell(s.ze)],
    [words.loop, fullCell(s.lineNeutralLoop)],
    ...(tt ? ([[words.ra, fullCell(s.ra)]] as const) : []),
    [words.faultCurrent, joined([fullCell(s.faultCurrent), ...method])],
    [words.earthFaultCurrent, fullCell(s.earthFaultCurrent)],
    [words.largest, largestFault(input)],
    [words.demand, joined([fullCell(s.statedDemand), ...(demand === undefined ? [] : [cell(demand.method)])])],
    ...furtherReadings(s),
  ];
}

/** The largest fault current that a device of the installation has to break, as the calculations have it, and between what. */
function largestFault({ installation, weighing }: ReportInput): Cell {
  const currents = weighing.circuits
    .flat()
    .filter(({ check }) => check === "breaking-capacity")
    .flatMap(({ judgement }) => [...nodesOf(judgement)].filter(isFaultCurrent));
  const { earthFaultCurrent } = installation.supply;
  const [largest] = [...currents, earthFaultCurrent].filter(isKnown).sort((a, b) => b.value - a.value);
  if (largest === undefined) return gap(REPORT.silence.absent);
  const between =
    largest === earthFaultCurrent
      ? REPORT.origin.toEarth
      : largest.term.id === TERM.threePhaseFaultCurrent.id
        ? REPORT.origin.threePhase
        : REPORT.origin.singlePhase;
  return cell(`${valueWords(largest)}, ${between}`);
}

function isFaultCurrent(node: Ground): node is Evidence<Unit> {
  return "term" in node && FAULT_CURRENTS.has(node.term.id);
}

const FAULT_CURRENTS: ReadonlySet<string> = new Set([
  TERM.faultCurrent.id,
  TERM.measuredFaultCurrent.id,
  TERM.threePhaseFaultCurrent.id,
]);

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
  const { supply: s, file, boards } = installation;
  const words = REPORT.origin;
  const { device } = s;
  const main = file.supply.mainSwitch;
  const breaking = valueCell(device.breakingCapacity);
  const written = file.supply.device;
  const first = boards.flatMap((board, i) => (board.feeder === undefined ? [{ board, written: file.boards[i] }] : []));
  return [
    [
      words.device,
      joined([
        particulars([
          [REPORT.standard, factCell(device.standard)],
          ...(device.type.kind === "fact" ? [["", factCell(device.type)] as const] : []),
          [REPORT.rating, valueCell(device.rated)],
          [REPORT.breaking, breaking.open ? breaking : cell(REPORT.kiloamperes(breaking.words))],
        ]),
        ...deviceFurther(device, written === undefined || "notKnown" in written ? undefined : written.note),
      ]),
    ],
    [words.tails, sized(s.tails)],
    [
      words.mainSwitch,
      particulars([
        ...labelled(words.fitted, factOf(main?.fitted)).map((one) => ["", one] as const),
        [REPORT.standard, cellOr(main?.standard)],
        [REPORT.poleless, main?.poles === undefined ? cellOr(undefined) : cell(REPORT.poles(main.poles))],
        [REPORT.rating, fullCell(s.mainSwitchRated)],
        ...(main?.voltage === undefined ? [] : [["", rangeCell(main.voltage)] as const]),
      ]),
    ],
    [
      words.mainSwitchPlace,
      first.length === 0
        ? gap(REPORT.silence.absent)
        : joined(
            first.map(({ board, written: one }) => joined([cell(board.name), cellOr(one?.location)])),
            "; ",
          ),
    ],
    [words.mainRcd, mainRcds(first.map(({ board }) => board))],
  ];
}

/** RCDs that stand before whole boards at the origin: the main switch among them. */
function mainRcds(boards: readonly Board[]): Cell {
  const all = boards.flatMap(({ rcds, name }) =>
    rcds.filter(({ servesWholeBoard }) => servesWholeBoard === true).map((rcd) => ({ rcd, name })),
  );
  if (all.length === 0) return cell(REPORT.noRcd);
  return joined(
    all.map(({ rcd, name }) => joined([cell(`${name}, ${REPORT.board.rcd(rcd.id ?? "")}`), rcdMarked(rcd)])),
    "; ",
  );
}

/** A conductor by everything recorded of it. */
function sized(conductor: Conductor): Cell {
  const { size, material } = conductor;
  const further = recordedRows(FIELDS_AT["supply/tails"], { ...conductor }, ["size", "material"]);
  return joined([
    particulars([
      [REPORT.size, fullCell(size)],
      [REPORT.material, fullFactCell(material)],
    ]),
    ...(further.length === 0 ? [] : [recordedLine(further)]),
  ]);
}

function earths({ installation }: ReportInput): readonly Row[] {
  const { supply: s, file } = installation;
  const words = REPORT.origin;
  const { electrode, earthingConductor: written } = file.supply;
  const { arrangement, sheathed, mechanicallyProtected } = s.earthingConductor;
  const routed = [
    ...labelled(words.arrangement, arrangement),
    ...labelled(words.sheathed, sheathed),
    ...labelled(words.mechanicallyProtected, mechanicallyProtected),
  ];
  return [
    [words.earthingConductor, joined([sized(s.earthingConductor), ...routed])],
    [words.earthingConnected, statedCell(written?.connected)],
    [words.earthingItem, itemCell(file, "earthing.conductor")],
    [words.terminalItem, itemCell(file, "earthing.main-terminal")],
    ...(electrode === undefined
      ? []
      : ([[words.electrode, joined([cellOr(electrode.kind), cellOr(electrode.location)])]] as const)),
  ];
}

/** What the inspection of an item came to. */
function itemCell({ inspected }: InspectionFile, id: ItemId): Cell {
  const answer = inspected.find(({ item }) => item === id);
  return answer === undefined ? gap(REPORT.origin.notAnswered) : cell(REPORT.itemOutcome[answer.outcome]);
}

/** Main bonding, a part a row, with everything recorded of part and conductor. */
function bonding({ installation }: ReportInput) {
  const words = REPORT.bonding;
  const written = installation.file.supply.bonding;
  return {
    title: words.title,
    none: installation.supply.bonding.length === 0 ? words.none : "",
    head: words.head,
    rows: installation.supply.bonding.map((bond, i) => {
      const { description, heatDamage } = written[i] ?? {};
      const part = [capitalised((bond.to ?? "").replaceAll("-", " ")), description ?? ""].filter((one) => one !== "");
      return [
        cell(part.join(": ")),
        recordedCell(
          { service: BONDS.service, extraneous: BONDS.extraneous, partResistance: BONDS.partResistance },
          bond,
        ),
        joined([
          particulars([
            [REPORT.size, fullCell(bond.size)],
            [REPORT.material, fullFactCell(bond.material)],
          ]),
          ...further({ length: BONDS.length, lengthFound: BONDS.lengthFound }, bond),
        ]),
        joined([
          fullFactCell(bond.connected),
          ...further({ condition: BONDS.condition }, bond),
          ...labelled(words.heatDamage, factOf(heatDamage)),
        ]),
        readingCell(bond.resistance),
      ];
    }),
  };
}

const BONDS = FIELDS_AT["supply/bonding/*"];

function recordedCell(fields: FieldSet, state: BondingConductor): Cell {
  const rows = recordedRows(fields, { ...state });
  return rows.length === 0 ? gap(REPORT.silence.absent) : recordedLine(rows);
}

function further(fields: FieldSet, state: BondingConductor): readonly Cell[] {
  const rows = recordedRows(fields, { ...state });
  return rows.length === 0 ? [] : [recordedLine(rows)];
}

/** A fact of the file that has no place among the resolved evidence. */
function factOf(
  stated: boolean | { readonly notKnown: Silence; readonly reason: string } | undefined,
): AnyFact | undefined {
  if (stated === undefined) return undefined;
  if (typeof stated === "boolean") return { kind: "fact", word: stated };
  return { kind: "fact-not-known", detail: { silence: stated.notKnown, reason: stated.reason } };
}
