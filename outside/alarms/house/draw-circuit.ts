import type { Draws } from "../draws.ts";
import { deviceOf, ohmsOfPole, residualDevice } from "./devices.ts";
import { type Circuit, type Conductor, cpcPerMetre, type Part, permittedPerMetre, place } from "./house.ts";
import { longestByDrop } from "./limits.ts";
import { cableOf, type Family, RECIPES, type Recipe, type RecipeName } from "./recipes.ts";

const ROOMS = [
  "hall",
  "kitchen",
  "lounge",
  "dining room",
  "bedroom 1",
  "bedroom 2",
  "bedroom 3",
  "landing",
  "study",
  "garage",
  "utility",
  "porch",
  "bathroom",
  "loft",
  "cellar",
];

/** A circuit of a kind on a board, as somebody once installed it. */
export function drawCircuit(
  name: RecipeName,
  board: string,
  number: number,
  family: Family,
  behind: Circuit["rcd"],
  draws: Draws,
): Circuit {
  const recipe: Recipe = RECIPES[name];
  const amperes = draws.one("amperes", recipe.amperes[family] ?? [32]);
  const choice = draws.one("cable", recipe.cables);
  const cable = cableOf(
    choice,
    draws.one("kind", choice.kinds),
    draws.one("method", choice.methods),
    draws.happens("cores", 0.5),
  );
  const id = `${board}-${number}`;
  const circuit = {
    id,
    board,
    says: recipe.says,
    load: recipe.load,
    shape: recipe.shape,
    sockets: recipe.sockets,
    device: deviceOf(family, amperes, name === "feeder", draws.of("device")),
    rcd: rcdFor(name, family, behind, draws),
    cable,
    points: pointNames(recipe, draws),
    amperes: Math.round(amperes * draws.between("loaded", ...recipe.loaded) * 10) / 10,
    insulation: {
      live: draws.acrossDecades("insulation-live", 15, 3000),
      earth: draws.acrossDecades("insulation-earth", 10, 3000),
      neutrals: draws.acrossDecades("insulation-neutrals", 15, 3000),
    },
    polarity: true,
  } as const;
  const [low, high] = recipe.metres;
  return { ...circuit, metres: draws.between("metres", low, Math.min(high, longestByDrop(circuit))) };
}

function rcdFor(name: RecipeName, family: Family, behind: Circuit["rcd"], draws: Draws): Circuit["rcd"] {
  if (name === "feeder") return "none";
  if (name === "vehicle")
    return { own: residualDevice("own", draws.of("rcd"), { standard: "BS EN 62423", type: "B" }) };
  return family === "rcbo" ? { own: residualDevice("own", draws.of("rcd"), { standard: "BS EN 61009" }) } : behind;
}

function pointNames({ points: [least, most], shape }: Recipe, draws: Draws): readonly string[] {
  const count = draws.whole("points", least, most);
  if (shape === "distribution") return ["the board fed"];
  return Array.from({ length: count }, (_, i) => `${draws.one(`room-${i}`, ROOMS)}, ${i + 1}`);
}

/** Conductors, joints and the pole of the device, from the bars of the board to every point. */
export function partsOf(circuit: Circuit, draws: Draws): readonly Part[] {
  const { id, board, device } = circuit;
  const parts: Part[] = [
    { a: place.bar(board, "L"), b: place.end(id, "L", "out"), ohms: ohmsOfPole(device, draws), of: id, warms: false },
    { a: place.bar(board, "N"), b: place.end(id, "N", "out"), ohms: joint(draws, "bar-N"), of: id, warms: false },
    { a: place.bar(board, "E"), b: place.end(id, "E", "out"), ohms: joint(draws, "bar-E"), of: id, warms: false },
  ];
  const legs = legsOf(circuit, draws);
  for (const conductor of ["L", "N", "E"] as const) {
    const perMetre = perMetreOf(circuit, conductor) * (1 - draws.of(conductor).between("below", 0, 0.04));
    legs.forEach((metres, i) => {
      const ohms = perMetre * metres + joint(draws, `${conductor}-${i}`);
      parts.push({ ...between(circuit, conductor, i), ohms, of: id, warms: true });
    });
    if (circuit.shape === "ring")
      parts.push({
        a: place.end(id, conductor, "back"),
        b: place.end(id, conductor, "out"),
        ohms: 0,
        of: returned(id),
        warms: false,
      });
  }
  const spur = spurOf(circuit, draws);
  return spur === undefined ? parts : withSpur(parts, circuit, spur, 1);
}

/** The point of a ring that hangs on a spur: a quarter of the larger rings have one, which is permitted. */
function spurOf({ shape, points }: Pick<Circuit, "shape" | "points">, draws: Draws): number | undefined {
  if (shape !== "ring" || points.length < 6 || !draws.happens("spur", 0.25)) return undefined;
  return draws.whole("spur-at", 1, points.length - 2);
}

/** The parts of a ring of which so many points, from one on, hang on the point before them and are left out of the ring. */
export function withSpur(parts: readonly Part[], circuit: Circuit, first: number, points: number): readonly Part[] {
  return (["L", "N", "E"] as const).reduce<readonly Part[]>((left, conductor) => {
    const over = between(circuit, conductor, first + points);
    const from = between(circuit, conductor, first).a;
    return left.map((part) => (part.a === over.a && part.b === over.b ? { ...part, a: from } : part));
  }, parts);
}

function perMetreOf({ cable }: Circuit, conductor: Conductor): number {
  return conductor === "E" ? cpcPerMetre(cable) : permittedPerMetre(cable.line, cable.material);
}

/** What joins the two ends of a ring at the board belongs to this: it is apart while the ends are tested. */
export function returned(circuit: string): string {
  return `${circuit}, returned`;
}

/** Where leg i of a conductor begins and ends; leg 0 leaves the board. */
export function between({ id, points, shape }: Circuit, conductor: Conductor, leg: number) {
  const stop = (i: number, end: "out" | "back") =>
    i < 0 || i >= points.length ? place.end(id, conductor, end) : place.at(id, conductor, i);
  if (shape !== "ring" && leg >= points.length) throw new Error(`${id} has no leg ${leg}`);
  return { a: stop(leg - 1, "out"), b: stop(leg, "back") };
}

/** Lengths from stop to stop, m. */
function legsOf({ points, shape, metres }: Circuit, draws: Draws): readonly number[] {
  const count = shape === "ring" ? points.length + 1 : points.length;
  const weights = Array.from({ length: count }, (_, i) => draws.acrossDecades(`leg-${i}`, 1, i === 0 ? 6 : 4));
  const spur = spurOf({ points, shape }, draws);
  const total = weights.reduce((sum, weight, leg) => sum + (leg === spur ? 0 : weight), 0);
  return weights.map((weight, leg) =>
    leg === spur ? draws.between("spur-metres", 1.5, 8) : (metres * weight) / total,
  );
}

/** A sound screwed joint, Ω. */
function joint(draws: Draws, name: string): number {
  return draws.acrossDecades(`joint-${name}`, 0.0002, 0.002);
}
