import type { Draws } from "../draws.ts";
import { greatestLoop, loopAtBoard } from "../site/loop.ts";
import { residualDevice } from "./devices.ts";
import { drawCircuit, partsOf } from "./draw-circuit.ts";
import { drawSupply } from "./draw-supply.ts";
import { type Board, type Circuit, type House, type Part, place } from "./house.ts";
import { carries, permittedLoop } from "./limits.ts";
import { type Family, RECIPES, type RecipeName } from "./recipes.ts";

/** An installation that is sound: every limit is met by what is there, however narrowly. */
export function drawHouse(draws: Draws): House {
  for (let attempt = 0; attempt < 200; attempt++) {
    const house = attempted(draws.of(`house-${attempt}`));
    if (house !== null) return house;
  }
  throw new Error("no sound house in 200 attempts");
}

function attempted(draws: Draws): House | null {
  const empty = drawSupply(draws);
  const family = draws.weighed<Family>("family", [
    [40, "split"],
    [30, "rcbo"],
    [8, "rewirable"],
    [6, "cartridge"],
    [8, "old-breakers"],
    [4, "bolted-fuses"],
  ]);
  let house: House | null = addBoard(empty, "main", "Consumer unit", "supply", family, draws.of("main"));
  house = house === null ? null : filled(house, "main", family, mainCircuits(family, draws), draws.of("main"));
  const feeds = !["rewirable", "old-breakers"].includes(family);
  if (feeds && draws.happens("second", 0.45)) house = withSubBoard(house, "sub", family, draws.of("sub"));
  if (feeds && draws.happens("third", 0.15)) house = withSubBoard(house, "out", family, draws.of("out"));
  return house;
}

function mainCircuits(family: Family, draws: Draws): readonly RecipeName[] {
  const now = family === "split" || family === "rcbo";
  const list: readonly (readonly [RecipeName, number])[] = [
    ["ring", 1],
    ["ring", 0.55],
    ["lighting", 1],
    ["lighting", 0.9],
    ["cooker", 0.8],
    ["shower", family === "bolted-fuses" ? 0 : 0.5],
    ["immersion", 0.5],
    ["boiler", 0.6],
    ["alarms", 0.5],
    ["radialSockets", 0.5],
    ["vehicle", now ? 0.2 : 0],
  ];
  return list.filter(([, often], i) => draws.happens(`has-${i}`, often)).map(([name]) => name);
}

function withSubBoard(house: House | null, id: string, family: Family, draws: Draws): House | null {
  if (house === null) return null;
  const number = house.circuits.filter(({ board }) => board === "main").length + 1;
  const fed = sound(
    house,
    () => drawCircuit("feeder", "main", number, family, "none", draws.of("feeder")),
    draws.of("feeder"),
  );
  const feeder = fed?.circuits.at(-1);
  if (fed === null || feeder === undefined) return null;
  const here = draws.one<Family>("family", ["split", "rcbo"]);
  const name = id === "sub" ? "Annexe board" : "Garage board";
  const board = addBoard(fed, id, name, { board: "main", circuit: feeder.id }, here, draws);
  const wanted: readonly (readonly [RecipeName, number])[] = [
    ["radialSockets", 0.8],
    ["lighting", 1],
    ["ring", 0.4],
    ["immersion", 0.3],
    ["vehicle", 0.2],
  ];
  const names = wanted.filter(([, often], i) => draws.happens(`has-${i}`, often)).map(([name]) => name);
  return filled(board, id, here, names, draws);
}

function addBoard(
  house: House,
  id: string,
  name: string,
  fedFrom: Board["fedFrom"],
  family: Family,
  draws: Draws,
): House {
  const listed = ["rcd-1", "rcd-2"].map((rcd) => residualDevice(rcd, draws.of(rcd)));
  const old = !["split", "rcbo"].includes(family);
  const first = house.earthing === "TT" && id === "main" && !old;
  const ahead = first ? [residualDevice("main", draws.of("ahead"), { delay: "S", milliamperes: 100 })] : [];
  const rcds = old ? [residualDevice("main", draws.of("ahead"))] : [...ahead, ...(family === "split" ? listed : [])];
  const board: Board = {
    id,
    name,
    fedFrom,
    rcds,
    whole: old || first,
    switchAmperes: id === "main" ? 100 : 63,
    besides: draws.acrossDecades("besides", 200, 3000),
  };
  return { ...house, boards: [...house.boards, board], parts: [...house.parts, ...barsOf(house, board)] };
}

/** What joins the bars of a board to the origin, or to the end of the circuit that feeds it. */
function barsOf({ circuits, parts }: House, { id, fedFrom }: Board): readonly Part[] {
  if (fedFrom === "supply") return [];
  const feeder = circuits.find((circuit) => circuit.id === fedFrom.circuit);
  if (feeder === undefined) throw new Error(`no circuit ${fedFrom.circuit} among ${parts.length} parts`);
  return (["L", "N", "E"] as const).map((conductor) => ({
    a: place.at(feeder.id, conductor, 0),
    b: place.bar(id, conductor),
    ohms: conductor === "E" ? 0.0005 : 0.001,
    of: "supply",
    warms: false,
  }));
}

function filled(start: House, board: string, family: Family, names: readonly RecipeName[], draws: Draws): House | null {
  let house: House | null = start;
  const rcds = start.boards.at(-1)?.rcds.filter(({ delay }) => delay === "general") ?? [];
  names.forEach((name, i) => {
    if (house === null) return;
    const rcd = rcds[i % Math.max(1, rcds.length)];
    const behind = rcd === undefined ? "none" : { board: rcd.id };
    const from = draws.of(`circuit-${i}`);
    house = sound(house, () => drawCircuit(name, board, i + 1, family, behind, from), from);
  });
  return house;
}

/** The house with one more circuit that keeps to its limits: shorter, or with a quicker device, until it does. */
function sound(house: House, draw: () => Circuit, draws: Draws): House | null {
  const first = draw();
  for (let attempt = 0; attempt < 9; attempt++) {
    const metres = first.metres * 0.8 ** attempt;
    const circuit = { ...first, metres, device: attempt < 2 ? first.device : quickest(first) };
    const parts = [...house.parts, ...partsOf(circuit, draws), ...pipesOf(circuit, house, draws)];
    const tried = { ...house, circuits: [...house.circuits, circuit], parts };
    if (keeps(tried, circuit)) return tried;
  }
  return null;
}

function quickest({ device }: Circuit): Circuit["device"] {
  if (device.standard === "BS 3871") return { ...device, type: "1" };
  return device.type === "C" || device.type === "D" ? { ...device, type: "B" } : device;
}

function keeps(house: House, circuit: Circuit): boolean {
  if (!carries(circuit)) return false;
  const current = 230 / loopAtBoard(house, circuit.board, "N", () => 20);
  if (current >= circuit.device.kiloamperes * 1000) return false;
  const hot = circuit.cable.insulation === "90C-thermosetting" ? 90 : 70;
  const loop = greatestLoop(house, circuit, () => hot);
  if (house.earthing !== "TT") return loop <= permittedLoop(circuit);
  const residual = circuit.shape === "distribution" || circuit.rcd === "none" ? 0.1 : 0.03;
  return loop * residual <= 50;
}

/** A heater or boiler joins its protective conductor to pipes, and these come back to the main terminal another way. */
function pipesOf({ id, load, points }: Circuit, house: House, draws: Draws): readonly Part[] {
  const recipe = Object.values(RECIPES).find((one) => one.load === load);
  if (recipe === undefined || house.bonds.length === 0 || !draws.happens("pipes", recipe.pipes)) return [];
  const ohms = draws.acrossDecades("pipe-ohms", 0.03, 3);
  return [{ a: place.at(id, "E", points.length - 1), b: place.mainEarth, ohms, of: id, warms: false }];
}
