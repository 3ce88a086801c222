import type { Path, Verdict } from "@good-grounds/core";
import { isKnown, SEVERITY } from "@good-grounds/core";
import type { Board, Circuit, Installation, ResidualDevice } from "@good-grounds/inspection";
import { VERDICT_SHORT } from "../locales/labels.ts";
import { valueWords } from "../words/figure.ts";
import { drawing, element, fitted, line, rect, text, textWidth } from "./svg.ts";
import { TOKENS } from "./tokens.ts";

export interface LineDiagramOptions {
  /** Worst verdict of a circuit, by its path. */
  readonly verdictOf: (circuit: Path) => Verdict;
  /** Rows on one drawing; a longer installation goes on to the next. */
  readonly rowsPerDrawing?: number;
}

const WIDTH = 520;
const ROW = 19;
const INDENT = 26;
/** Boards within boards share this much room, however deep they go. */
const DEEPEST = 182;
const START = 30;
const DEVICE_WIDTH = 62;

/** Where the bar of a board lies across the drawing, by how many boards it is away from the origin. */
type Across = (depth: number) => number;

/** One row of the diagram: a piece of the origin, a board's heading, or a way with its circuit. */
type Row =
  | { readonly kind: "origin"; readonly words: string; readonly detail: string; readonly last: boolean }
  | {
      readonly kind: "board";
      readonly board: Board;
      readonly depth: number;
      readonly ways: number;
      readonly through: readonly number[];
      readonly surge: string;
    }
  | {
      readonly kind: "way";
      readonly circuit: Circuit;
      readonly depth: number;
      readonly last: boolean;
      readonly through: readonly number[];
    };

/**
 * The installation from the origin outwards as a single-line diagram: intake, earthing, boards with their ways, boards
 * that are fed from a way set in below it. Each way shows device, RCD and the worst verdict of its circuit. One SVG for
 * each page of rows.
 */
export function lineDiagram(installation: Installation, options: LineDiagramOptions): readonly string[] {
  const rows = [...originRows(installation), ...boardRows(installation)];
  const size = options.rowsPerDrawing ?? 34;
  const deepest = Math.max(1, ...rows.map((row) => (row.kind === "origin" ? 0 : row.depth)));
  const xOf: Across = (depth) => START + depth * Math.min(INDENT, DEEPEST / deepest);
  const pages: string[] = [];
  for (let from = 0; from < rows.length; from += size) {
    const page = rows.slice(from, from + size);
    const inner = page.map((row, i) => draw(row, 8 + i * ROW, xOf, options)).join("");
    const part = rows.length > size ? `, part ${pages.length + 1}` : "";
    pages.push(drawing(WIDTH, page.length * ROW + 16, `Line diagram${part}`, page.map(describe).join(". "), inner));
  }
  return pages;
}

function originRows({ supply }: Installation): Row[] {
  const word = (fact: { readonly kind: string; readonly word?: string | boolean }) =>
    fact.kind === "fact" ? String(fact.word) : "not known";
  const bonds = supply.bonding.map((bond) => `${bond.to} ${valueWords(bond.size)}`).join(", ");
  const rows: [string, string][] = [
    [
      "Supply",
      `${word(supply.earthing)}, ${word(supply.phases) === "3" ? "three-phase" : "single-phase"}, Ze ${valueWords(supply.ze)}`,
    ],
    [
      "Cut-out",
      `${word(supply.device.standard)}, ${valueWords(supply.device.rated)}; tails ${valueWords(supply.tails.size)}`,
    ],
    ["Earthing", `conductor ${valueWords(supply.earthingConductor.size)}${bonds === "" ? "" : `; bonding: ${bonds}`}`],
  ];
  return rows.map(([words, detail], i) => ({ kind: "origin", words, detail, last: i === rows.length - 1 }));
}

function boardRows(installation: Installation): Row[] {
  const rows: Row[] = [];
  // `through` holds the depths of boards further in towards the origin whose bars run on past a row.
  const visit = (board: Board, depth: number, through: readonly number[]) => {
    const surge = surgeShort(board, installation);
    rows.push({ kind: "board", board, depth, ways: board.circuits.length, through, surge });
    for (const [i, circuit] of board.circuits.entries()) {
      const last = i === board.circuits.length - 1;
      rows.push({ kind: "way", circuit, depth, last, through });
      const inside = last ? through : [...through, depth];
      for (const fed of installation.boards) if (fed.feeder === circuit) visit(fed, depth + 1, inside);
    }
  };
  for (const board of installation.boards) if (board.feeder === undefined) visit(board, 0, []);
  return rows;
}

function draw(row: Row, top: number, xOf: Across, options: LineDiagramOptions): string {
  const passing = row.kind === "origin" ? [] : row.through;
  return passing.map((depth) => busAt(xOf(depth), top, top + ROW)).join("") + drawOwn(row, top, xOf, options);
}

function busAt(x: number, from: number, to: number): string {
  return line(x, from, x, to, { "stroke-width": 2.2 });
}

function drawOwn(row: Row, top: number, xOf: Across, options: LineDiagramOptions): string {
  const middle = top + ROW / 2;
  switch (row.kind) {
    case "origin": {
      const node = element("circle", {
        cx: START,
        cy: middle,
        r: 3.2,
        fill: TOKENS.paper,
        stroke: TOKENS.ink,
        "stroke-width": 1.4,
      });
      const down = line(START, middle, START, top + ROW, { "stroke-width": 1.6 });
      const earth = row.words === "Earthing" ? earthSymbol(START, middle) : "";
      return (
        down +
        node +
        earth +
        text(START + 16, middle + 3.5, row.words, { "font-weight": 600 }) +
        text(START + 76, middle + 3.5, fitted(row.detail, WIDTH - START - 90))
      );
    }
    case "board": {
      const x = xOf(row.depth);
      const bar = rect(x - 3, middle - 6, 6, 12, { fill: TOKENS.ink });
      const down = row.ways > 0 ? busAt(x, middle, top + ROW) : "";
      const switchAndZdb = `main switch ${valueWords(row.board.mainSwitchRated)}, Zdb ${valueWords(row.board.zdb)}${row.surge}`;
      const right = fitted(switchAndZdb, 300, TOKENS.small);
      const room = WIDTH - 20 - textWidth(right, TOKENS.small) - (x + 14);
      return (
        bar +
        down +
        text(x + 14, middle + 3.5, fitted(row.board.name, room), { "font-weight": 700 }) +
        text(WIDTH - 8, middle + 3.5, right, { "text-anchor": "end", "font-size": TOKENS.small })
      );
    }
    case "way":
      return drawWay(row, top, xOf(row.depth), options);
  }
}

function drawWay(
  { circuit, last }: Extract<Row, { kind: "way" }>,
  top: number,
  x: number,
  options: LineDiagramOptions,
): string {
  const middle = top + ROW / 2;
  const bus = busAt(x, top, last ? middle : top + ROW);
  const box = x + 16;
  const stub = line(x, middle, box, middle);
  const { rated, type } = circuit.device;
  const label = `${valueWords(rated)}${type.kind === "fact" && /^[BCD1-4]$/.test(type.word) ? ` ${type.word}` : ""}`;
  const device = rect(box, middle - 6.5, DEVICE_WIDTH, 13, {
    fill: TOKENS.paper,
    stroke: TOKENS.ink,
    "stroke-width": 0.9,
  });
  const deviceText = text(box + DEVICE_WIDTH / 2, middle + 3.2, fitted(label, DEVICE_WIDTH - 4, TOKENS.small), {
    "text-anchor": "middle",
    "font-size": TOKENS.small,
  });
  const rings = circuit.residual.devices.slice(0, RINGS);
  const from = box + DEVICE_WIDTH;
  const words = from + 8 + RINGS * RING_WIDTH;
  const run = line(from, middle, words - 4, middle, { "stroke-width": 0.8 });
  const ring = rings.map((rcd, i) => drawRing(rcd, from + 4 + RING_WIDTH / 2 + i * RING_WIDTH, middle)).join("");
  // A way of a board far from the origin has no room for sizes beside its name.
  const sized = words + LEAST_NAME < CABLES;
  const name = fitted(`${circuit.designation}  ${circuit.description}`, (sized ? CABLES - 6 : WIDTH - 92) - words);
  return (
    bus +
    stub +
    phaseMarks(circuit, x + 8, middle) +
    run +
    device +
    deviceText +
    ring +
    text(words, middle + 3.5, name) +
    (sized
      ? text(CABLES, middle + 3.2, fitted(sizesShort(circuit), WIDTH - CABLES - 84, TOKENS.small), {
          "font-size": TOKENS.small,
        })
      : "") +
    verdictMark(options.verdictOf(circuit.path), WIDTH - 8, middle)
  );
}

/** RCDs drawn on a way: one shared by several circuits carries its name, its own none. */
const RINGS = 2;
const RING_WIDTH = 42;
/** Where the sizes of the cables stand. */
const CABLES = 356;
const LEAST_NAME = 60;

function drawRing(rcd: ResidualDevice, x: number, middle: number): string {
  const current = residualShort(rcd.residual);
  const width = RING_WIDTH - 4;
  const words = fitted(rcd.id === undefined ? current : `${current} ${rcd.id}`, width - 5, SMALLEST);
  return (
    rect(x - width / 2, middle - 6.5, width, 13, {
      rx: 6.5,
      fill: TOKENS.paper,
      stroke: TOKENS.copper,
      "stroke-width": rcd.id === undefined ? 1 : 1.8,
    }) + text(x, middle + 2.6, words, { "text-anchor": "middle", "font-size": SMALLEST })
  );
}

/** As large in print as the smallest print of the report. */
const SMALLEST = 7.6;

/** Strokes across the line of a way, one a phase: three where it has three. */
function phaseMarks({ phases, board }: Circuit, x: number, middle: number): string {
  const stated = phases.kind === "fact" ? phases : board.phases;
  const count = stated.kind === "fact" && stated.word === "3" ? 3 : 1;
  return Array.from({ length: count }, (_, i) =>
    line(x + i * 2.4 - 3, middle + 3, x + i * 2.4, middle - 3, { "stroke-width": 0.8 }),
  ).join("");
}

/** "2.5 / 1.5 mm²": the line and the protective conductor of the cable of a circuit; a question mark for what is not known. */
function sizesShort({ cable: { line: live, cpc } }: Circuit): string {
  const figures = [live, cpc].map((size) => (isKnown(size) ? valueWords(size).replace(/ ?mm²$/, "") : "?"));
  return figures.every((one) => one === "?") ? "" : `${figures.join(" / ")} mm²`;
}

/** Surge protective devices at a board: a word for what is recorded. */
function surgeShort(board: Board, { things }: Installation): string {
  const found = things.ofKind("surgeDevices").filter((one) => one.board === board.id);
  if (found.length === 0) return "";
  const types = found.flatMap(({ state: { fitted: there, type } }) =>
    there.kind !== "fact"
      ? ["not known"]
      : there.word
        ? [type.kind === "fact" ? `type ${type.word}` : "fitted"]
        : ["none"],
  );
  return `, surge protection ${types.join(", ")}`;
}

function residualShort(residual: Parameters<typeof valueWords>[0]): string {
  return residual.kind === "not-known" || residual.kind === "lacking" ? "?" : String(Math.round(residual.value * 1000));
}

/** The verdict in words with a mark whose weight grows with it; open verdicts are open marks. */
function verdictMark(verdict: Verdict, right: number, middle: number): string {
  const heavy = SEVERITY[verdict] === SEVERITY["not-met"];
  const mark =
    verdict === "met" || verdict === "not-applicable"
      ? line(right - 8, middle, right, middle, { "stroke-width": 0.9 })
      : rect(right - 8, middle - 4, 8, 8, {
          fill: heavy ? TOKENS.ink : "none",
          stroke: TOKENS.ink,
          "stroke-width": 1,
          ...(verdict === "not-known" ? { "stroke-dasharray": "2 1.4" } : {}),
        });
  return (
    mark +
    text(right - 13, middle + 3.2, VERDICT_SHORT[verdict].toLowerCase(), {
      "text-anchor": "end",
      "font-size": TOKENS.small,
      "font-weight": heavy ? 700 : 400,
    })
  );
}

function earthSymbol(x: number, y: number): string {
  const left = x - 15;
  return (
    line(left, y, x - 3, y) +
    line(left, y, left, y + 3) +
    [0, 1, 2].map((i) => line(left - 5 + i * 1.6, y + 3 + i * 2.2, left + 5 - i * 1.6, y + 3 + i * 2.2)).join("")
  );
}

function describe(row: Row): string {
  if (row.kind === "origin") return `${row.words}: ${row.detail}`;
  if (row.kind === "board") return `Board ${row.board.name} with ${row.ways} ways`;
  const rcds = row.circuit.residual.devices.map(
    ({ id, residual }) => `RCD ${id ?? "of its own"} ${residualShort(residual)} mA`,
  );
  const device = valueWords(row.circuit.device.rated);
  return [`Way ${row.circuit.designation}, ${row.circuit.description}`, device, ...rcds, sizesShort(row.circuit)]
    .filter((part) => part !== "")
    .join(", ");
}
