import { spokenOf } from "@good-grounds/inspection";
import type { ReportInput } from "../../input.ts";
import { WORDS } from "../../locales/en.ts";
import { CLASSIFICATION, SILENCE } from "../../locales/labels.ts";
import { REPORT } from "../../locales/report-en.ts";
import { numbered, type Observation } from "../../words/observation-number.ts";
import { worstFirst } from "../../words/worst-first.ts";
import { type Cell, cell, gap } from "../cell.ts";
import type { Drawings } from "../drawings.ts";
import { keptWhole } from "../whole.ts";
import { nameOf } from "./frame.ts";
import { lineOfReasoning } from "./line-of-reasoning.ts";
import { capitalised, codeOf, markOf } from "./observation-order.ts";
import { needsAttention, titleOf, verdictLine } from "./reading-finding.ts";
import { thingName } from "./things.ts";

/** Characters of what stands before the reasoning, where it is kept on one page. */
const KEPT_WHOLE = 1800;

/** Observations with everything that was recorded about them, most urgent first. */
export function observations(input: ReportInput, drawings: Drawings) {
  const list = numbered(input.installation.file).map(({ number, at, group, observation }) => ({
    ...keptWhole(
      {
        mark: markOf(group, drawings),
        code: codeOf(group),
        number: REPORT.numbered(number, at),
        place: capitalised(observation.place),
        what: observation.what,
        details: details(input, observation),
        "checks-label": REPORT.checksLabel,
        checks: checksOf(input, observation),
        photographs: shownOf(input, observation),
      },
      KEPT_WHOLE,
    ),
    reasoning: lineOfReasoning(input, observation, drawings),
  }));
  return { title: REPORT.observationsTitle, intro: REPORT.observationsIntro, none: REPORT.noObservations, list };
}

type Row = readonly [label: string, cell: Cell];

function details(input: ReportInput, one: Observation): readonly Row[] {
  const { file } = input.installation;
  const { choice, facts = {}, regulations = [], remedy, madeSafe, untold } = one;
  const rows: Row[] = [];
  if (choice === undefined) rows.push([REPORT.choiceLabel, gap(REPORT.openChoice)]);
  else {
    const by = REPORT.choiceBy(nameOf(file, choice.by), choice.at ?? "");
    rows.push([
      REPORT.choiceLabel,
      cell(`${REPORT.choice(CLASSIFICATION[choice.classification], choice.reason)} ${by}`),
    ]);
  }
  rows.push(...positions(input, one));
  const recorded = Object.entries(facts).map(([name, value]) => `${factName(name)}: ${factWord(value)}`);
  // The argument shows the facts it rests on; without one they stand here.
  const argued = input.reasoned.some(({ observation }) => observation === one.id);
  if (recorded.length > 0 && !argued) rows.push([REPORT.factsLabel, cell(recorded.join("; "))]);
  if (regulations.length > 0) rows.push([REPORT.regulationLabel, cell(REPORT.regulations(regulations))]);
  else if (choice?.classification !== "none") rows.push([REPORT.regulationLabel, gap(REPORT.notRecorded)]);
  if (choice?.classification !== "none" || remedy !== undefined)
    rows.push([REPORT.remedyLabel, remedyCell(input, one)]);
  if (madeSafe !== undefined) {
    const { done, told, at, reply } = madeSafe;
    rows.push([REPORT.madeSafeLabel, cell(REPORT.madeSafe(done, told, at, reply ?? ""))]);
  }
  if (untold !== undefined) rows.push([REPORT.untoldLabel, cell(REPORT.untold(untold))]);
  else if (madeSafe === undefined && choice?.classification === "C1")
    rows.push([REPORT.madeSafeLabel, gap(REPORT.madeSafeMissing)]);
  const photographs = (one.photographs ?? []).flatMap((hash) =>
    file.photographs.filter(({ sha256 }) => sha256 === hash),
  );
  rows.push([
    REPORT.photosLabel,
    photographs.length === 0
      ? gap(REPORT.noPhotograph)
      : cell(photographs.map(({ name, description }) => `${name}: ${description}`).join("; ")),
  ]);
  rows.push(...whereabouts(input, one), ...partsOf(input, one));
  if (one.foundOn !== undefined) rows.push([REPORT.foundOnLabel, cell(REPORT.day(one.foundOn))]);
  return rows;
}

/** The photographs of an observation that are at hand. */
function shownOf({ photographs, installation: { file } }: ReportInput, one: Observation) {
  return (one.photographs ?? []).flatMap((hash) => {
    const image = photographs?.get(hash);
    const said = file.photographs.find(({ sha256 }) => sha256 === hash);
    if (image === undefined || said === undefined) return [];
    const { name, description, place, taken } = said;
    const caption = [name, place, taken === undefined ? undefined : REPORT.moment(taken)].filter(Boolean).join(", ");
    return [{ image, alt: description, caption: `${description} (${caption})` }];
  });
}

function remedyCell({ reasoned }: ReportInput, { id, remedy }: Observation): Cell {
  if (remedy !== undefined) return cell(remedy);
  const allowed = reasoned.find(({ observation }) => observation === id)?.remedies ?? [];
  return allowed.length === 0 ? gap(REPORT.notRecorded) : cell(REPORT.proposedBelow);
}

/** Why the inspector takes a position, or the firm as a standing view; what speaks for each stands in the argument. */
function positions({ installation: { file }, reasoned }: ReportInput, one: Observation): readonly Row[] {
  const own = one.positions ?? {};
  const topic = reasoned.find(({ observation }) => observation === one.id)?.topic;
  const wordsOf = (point: string, position: string) =>
    topic?.contested[point]?.positions[position]?.words ?? `${point}: ${position}`;
  return [
    ...Object.entries(own).flatMap(([point, { position, reason }]) =>
      reason === undefined ? [] : [REPORT.position(wordsOf(point, position), reason)],
    ),
    ...(file.standingViews ?? [])
      .filter(({ topic: of, point }) => of === one.topic && !Object.hasOwn(own, point))
      .map(({ point, position, reason }) => REPORT.standingView(wordsOf(point, position), reason)),
  ].map((words): Row => [REPORT.positionLabel, cell(words)]);
}

/** "burn-marks" and "burnMarks" as "burn marks". */
function factName(name: string): string {
  return name
    .replaceAll(/([a-z])([A-Z])/g, "$1 $2")
    .replaceAll(/[-_.]+/g, " ")
    .toLowerCase();
}

function factWord(value: NonNullable<Observation["facts"]>[string]): string {
  if (typeof value === "object") return `${SILENCE[value.notKnown]} (${value.reason})`;
  return value === true ? WORDS.yes : value === false ? WORDS.no : value;
}

function circuitOf({ installation }: ReportInput, one: Observation): number {
  return installation.circuits.findIndex(({ id, board }) => id === one.circuit && board.id === one.board);
}

function whereabouts(input: ReportInput, one: Observation): readonly Row[] {
  const circuit = input.installation.circuits[circuitOf(input, one)];
  if (circuit !== undefined)
    return [
      [REPORT.circuitLabel, cell(`${circuit.board.name}, circuit ${circuit.designation} ${circuit.description}`)],
    ];
  const board = input.installation.boards.find(({ id }) => id === one.board);
  return board === undefined ? [] : [[REPORT.boardLabel, cell(board.name)]];
}

/** The parts it speaks of, with how many of each; circuits of all of them where they are several. */
function partsOf({ installation }: ReportInput, one: Observation): readonly Row[] {
  const spoken = spokenOf(one, installation);
  if (spoken.length === 0) return [];
  const parts = spoken.map((part) => {
    const name =
      part.kind === "thing"
        ? thingName(part.thing)
        : part.kind === "bond"
          ? WORDS.bond((part.bond.to ?? "").replaceAll("-", " "))
          : WORDS.rcd(part.rcd.id ?? "");
    return part.quantity === 1 ? name : REPORT.times(name, part.quantity);
  });
  const ids = new Set(
    spoken.flatMap((part) =>
      part.kind === "thing" && part.thing.circuit !== undefined ? [`${part.thing.board}/${part.thing.circuit}`] : [],
    ),
  );
  const circuits = installation.circuits.filter(({ id, board }) => ids.has(`${board.id}/${id}`));
  return [
    [REPORT.partsLabel, cell(parts.join("; "))],
    ...(circuits.length < 2
      ? []
      : [
          [
            REPORT.circuitsLabel,
            cell(
              circuits
                .map(({ board, designation, description }) => `${board.name}, ${designation} ${description}`)
                .join("; "),
            ),
          ] as const,
        ]),
  ];
}

/** What the calculations say about the observation's circuit where they do not say that all is met. */
function checksOf(input: ReportInput, one: Observation): readonly string[] {
  const findings = input.weighing.circuits[circuitOf(input, one)] ?? [];
  return findings
    .filter(({ judgement }) => needsAttention(judgement.verdict))
    .sort(worstFirst(input.checks))
    .map(({ check, judgement }) => `${titleOf(input.checks, check)}: ${verdictLine(judgement)}`);
}
