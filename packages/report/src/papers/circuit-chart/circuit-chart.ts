import type { Board, Circuit } from "@good-grounds/inspection";
import { wordsOfCell } from "../../document/cell-words.ts";
import type { Block, Document, TableCell, Words } from "../../document/model.ts";
import type { ReportInput } from "../../input.ts";
import { CHART } from "../../locales/circuit-chart-en.ts";
import { PAPERS } from "../../locales/papers-en.ts";
import { valueCell } from "../../pdf/cell.ts";
import { capitalised } from "../../pdf/sections/observation-order.ts";
import { shortened } from "../../pdf/sections/shortened.ts";
import { deviceShort, residualAheadShort, residualShort, sizesShort } from "../circuit-words.ts";
import { headOf } from "../head.ts";
import { notices, paper } from "../paper.ts";

/** Lines left free for what is changed later, at least; a board with few circuits has a chart of so many lines. */
const BLANK = 4;
const LINES = 12;
/** Letters in points and least height of a row in mm: to be read in a cupboard and written in by hand. */
const FEW = { size: 14, rowHeight: 12 };
const MANY = { size: 12.5, rowHeight: 10 };

/** A chart for the door of each board, a sheet of its own for every one. */
export function circuitChart(input: ReportInput): Document {
  const { boards } = input.installation;
  const head = headOf(input);
  const sheets = boards.flatMap((board, i): readonly Block[] => [
    ...(i === 0 ? [] : [{ kind: "break" } as const]),
    ...sheet(board, i, input),
  ]);
  return paper(input, {
    name: CHART.name,
    size: 12,
    // What a circuit is does not wait for what is still to be decided of it.
    ...(head.signed.length === 0 ? {} : { holds: true }),
    blocks: [
      { kind: "title", over: CHART.name, words: head.address },
      ...notices(input, head.signed.length === 0 ? head.draft : ""),
      ...(boards.length === 0 ? [{ kind: "paragraph", words: CHART.noBoard } as const] : sheets),
    ],
  });
}

function sheet(board: Board, index: number, input: ReportInput): readonly Block[] {
  return [
    { kind: "heading", level: 1, words: board.name },
    { kind: "facts", columns: 2, rows: particulars(board, index, input), names: 24 },
    ...sources(input),
    ...(board.circuits.length === 0 ? [{ kind: "paragraph", words: CHART.noCircuits } as const] : []),
    table(board),
    ...notes(board),
  ];
}

function particulars(
  board: Board,
  index: number,
  input: ReportInput,
): readonly (readonly [name: string, value: Words])[] {
  const { feeder, mainSwitchRated, mainSwitchFitted } = board;
  const location = input.installation.file.boards[index]?.location;
  const from = feeder === undefined ? CHART.fromSupply : CHART.fromCircuit(feeder.board.name, feeder.designation);
  const ahead = residualAheadShort(board);
  const none = mainSwitchFitted.kind === "fact" && !mainSwitchFitted.word;
  return [
    [CHART.at, location ?? [{ text: PAPERS.notRecorded, as: "gap" }]],
    [CHART.from, from],
    [CHART.switch, none ? CHART.noSwitch : wordsOfCell(valueCell(mainSwitchRated))],
    ...(ahead === undefined ? [] : [[CHART.ahead, wordsOfCell(ahead)] as const]),
    [CHART.asOfLabel, CHART.asOf(input.installation.file.inspectedOn)],
  ];
}

/** What feeds the installation beside the network: a switch that is off proves nothing then. */
function sources({ installation: { file } }: ReportInput): readonly Block[] {
  const kinds = [...new Set((file.supply.otherSources ?? []).map(({ kind }) => kind))];
  if (kinds.length === 0) return [];
  return [{ kind: "frame", as: "alert", blocks: [{ kind: "paragraph", words: CHART.sources(kinds) }] }];
}

function table(board: Board): Block {
  const [no, serves, device, rcd, notes] = CHART.columns;
  const blanks = Math.max(BLANK, LINES - board.circuits.length);
  const blank: readonly TableCell[] = ["", "", "", "", ""];
  return {
    kind: "table",
    caption: CHART.caption(shortened(board.name, 60)),
    ...(board.circuits.length + BLANK <= LINES ? FEW : MANY),
    columns: [
      { head: no, width: 14 },
      { head: serves, width: "7fr" },
      { head: device, width: "5fr" },
      { head: rcd, width: "8fr" },
      { head: notes, width: "6fr" },
    ],
    rows: [...board.circuits.map(row), ...Array.from({ length: blanks }, () => blank)],
  };
}

function row(circuit: Circuit): readonly TableCell[] {
  const { designation, description } = circuit;
  return [
    [{ text: designation, as: "strong" }],
    [{ text: capitalised(description), as: "strong" }],
    wordsOfCell(deviceShort(circuit)),
    wordsOfCell(residualShort(circuit)),
    [{ text: notesOf(circuit), as: "small" }],
  ];
}

/** Size of the cable, number of points and phases, as far as they are recorded: the rest of the cell is for notes. */
function notesOf(circuit: Circuit): string {
  const { points, phases } = circuit;
  return [
    sizesShort(circuit),
    points === undefined ? "" : CHART.points(points),
    phases.kind === "fact" && phases.word === "3" ? CHART.phases : "",
  ]
    .filter((words) => words !== "")
    .join("; ");
}

/** That the buttons are to be pressed, where there are any; and that changes are to be written in. */
function notes({ circuits, rcds }: Board): readonly Block[] {
  const isThere = rcds.length > 0 || circuits.some(({ residual }) => residual.devices.length > 0);
  return [
    ...(isThere ? [{ kind: "paragraph", words: [{ text: CHART.button, as: "strong" }] } as const] : []),
    { kind: "paragraph", words: CHART.change, as: "small" },
  ];
}
