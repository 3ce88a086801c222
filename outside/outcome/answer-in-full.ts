import type { OpenPoint, Path } from "@good-grounds/core";
import { complete, type Data, outcomeOfData } from "./complete.ts";

type Loose = { [name: string]: Loose } & Loose[];

/** Readings by the test that they are the record of, at a circuit, an RCD or the origin. */
const RECORD: Readonly<Record<string, readonly string[]>> = {
  continuity: ["r1r2"],
  insulation: ["insulationLiveEarth"],
  zs: ["zs"],
  "rcd-time": ["atRated"],
  ze: ["ze"],
};

const LIMITED = { notTaken: "limited", reason: "the freezer on it may not be switched off, agreed with the owner" };
const READ_AGAIN = "Read again with another instrument on the same day, and written down as it was shown.";

/** Rounds of answering: an answer may let a point show that stood with another. */
const ROUNDS = 6;

/**
 * A job of a sound installation as a careful inspector finishes it: a test that was left out is a limitation with its
 * reason, and of a reading that does not fit an observation says that it was taken again.
 */
export function answeredInFull(file: object): Data {
  let data = complete(file);
  for (let round = 0; round < ROUNDS; round++) {
    const { points } = outcomeOfData(data);
    if (points.length === 0) return data;
    for (const point of points) answer(data as unknown as Loose, point);
    data = JSON.parse(JSON.stringify(data)) as Data;
  }
  return data;
}

function answer(data: Loose, point: OpenPoint): void {
  for (const one of point.follow ?? []) answer(data, one);
  switch (point.kind) {
    case "not-tested":
      for (const path of point.places) for (const test of point.tests) limit(at(data, path), RECORD[test] ?? []);
      return;
    case "not-met":
    case "past-limit":
    case "not-known":
      for (const path of point.places) observe(data, path, point.check);
      return;
    case "misfit":
      for (const path of point.places) observe(data, path, point.misfit);
      return;
    default:
  }
}

function at(data: Loose, path: Path): Loose {
  return path.reduce<Loose>((one, step) => one[step as number] as Loose, data);
}

function limit(place: Loose, names: readonly string[]): void {
  const readings = (place.readings ?? {}) as Record<string, unknown>;
  for (const name of names) readings[name] = LIMITED;
  Object.assign(place, { readings });
}

function observe(data: Loose, [head, board, list, member]: Path, check: string): void {
  const of = head === "boards" ? at(data, ["boards", Number(board)]) : undefined;
  const thing = of === undefined || member === undefined ? undefined : at(of, [String(list), Number(member)]);
  const observations = (data.observations ?? []) as unknown[];
  observations.push({
    id: `answer-${observations.length + 1}`,
    ...(of === undefined ? {} : { board: of.id }),
    ...(list === "circuits" ? { circuit: thing?.id } : {}),
    place: "at the board",
    what: "A reading stands out.",
    answers: [{ check, ...(list === "rcds" ? { part: thing?.id } : {}) }],
    choice: { classification: "none", reason: READ_AGAIN, by: "inspector" },
  });
  Object.assign(data, { observations });
}
