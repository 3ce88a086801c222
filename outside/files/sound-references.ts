import type { InspectionFile } from "@good-grounds/inspection";
import { soundThings } from "./sound-things.ts";

type Board = InspectionFile["boards"][number];
type Circuit = Board["circuits"][number];

/**
 * A file whose shape is right but whose references were drawn blindly, mended: ids once each, references to something
 * that is there or left out, one answer to an item, counts that are possible. Nothing else is touched.
 */
export function withSoundReferences(file: InspectionFile): InspectionFile {
  const people = once(file.people);
  const instruments = once(file.instruments);
  const photographs = once(file.photographs, ({ sha256 }) => sha256);
  const taken = { by: ids(people), with: ids(instruments) };
  const boards = feeding(once(file.boards)).map((board) => wired(board));
  const things = soundThings(file.things, boards, "t");
  const observations = once(file.observations).map((one, i) =>
    observed({ ...one, ...brought(one, boards, `o${i}`) }, boards, ids(people), photographs),
  );
  const { otherSources, ...supply } = file.supply;
  const mended: InspectionFile = {
    ...file,
    people,
    instruments,
    photographs,
    observations,
    limitations: once(file.limitations),
    supply: {
      ...supply,
      bonding: once(supply.bonding),
      ...(otherSources === undefined ? {} : { otherSources: once(otherSources) }),
    },
    boards,
    ...(things === undefined ? {} : { things }),
    extent: {
      ...file.extent,
      sampling: file.extent.sampling.map((sample) => {
        const [defective = 0, inspected = 0, population = 0] = [
          sample.population,
          sample.inspected,
          sample.defective,
        ].sort((a, b) => a - b);
        return { ...sample, population, inspected, defective };
      }),
    },
    inspected: once(file.inspected, ({ item }) => item).map((answer) => ({
      ...answer,
      outcome: answer.outcome === "observed" && observations.length === 0 ? "in-order" : answer.outcome,
      reason: answer.reason ?? "as drawn",
      observations: observations.slice(0, 1).map(({ id }) => id),
    })),
    signatures:
      people.length === 0 ? [] : file.signatures.map((one) => ({ ...one, person: pick(ids(people), one.at) })),
  };
  return settled(mended, taken) as InspectionFile;
}

function once<T>(rows: readonly T[], key: (row: T) => string = (row) => (row as { id: string }).id): T[] {
  return [...new Map(rows.map((row) => [key(row), row])).values()];
}

const ids = (rows: readonly { readonly id: string }[]) => rows.map(({ id }) => id);

/** One of the known ids, the same one for the same text. */
function pick(known: readonly string[], text: string): string {
  const found = known[text.length % known.length];
  if (found === undefined) throw new Error("nothing to pick from");
  return found;
}

/** Every board leads back to the supply, through a circuit of a board before it. */
function feeding(boards: readonly Board[]): Board[] {
  return boards.map((board, i) => {
    const before = boards.slice(0, i).filter(({ circuits }) => circuits.length > 0);
    const feeder = before[board.name.length % Math.max(1, before.length)];
    const circuit = feeder?.circuits[0];
    if (board.fedFrom === "supply" || feeder === undefined || circuit === undefined)
      return { ...board, fedFrom: "supply" };
    return { ...board, fedFrom: { board: feeder.id, circuit: circuit.id } };
  });
}

/** A device that cannot be tested says why. */
function explained<R extends { readonly testability?: unknown }>(rcd: R): R {
  return rcd.testability === "cannot-be-tested" ? { ...rcd, whyNotTested: "as drawn" } : rcd;
}

function wired(board: Board): Board {
  const rcds = once(board.rcds ?? []).map(explained);
  const circuits = once(board.circuits).map((circuit): Circuit => {
    const { rcd } = circuit;
    if (rcd !== undefined && rcd !== "none" && "own" in rcd) return { ...circuit, rcd: { own: explained(rcd.own) } };
    if (rcd === undefined || rcd === "none" || !("board" in rcd)) return circuit;
    return { ...circuit, rcd: rcds.length === 0 ? "none" : { board: pick(ids(rcds), rcd.board) } };
  });
  return { ...board, circuits, ...(board.rcds === undefined ? {} : { rcds }) };
}

/** What an observation brings in, and that it speaks of the first of it. */
function brought(
  { brings }: InspectionFile["observations"][number],
  boards: readonly Board[],
  ids: string,
): Pick<InspectionFile["observations"][number], "brings"> {
  const sound = soundThings(brings, boards, ids);
  return sound === undefined ? {} : { brings: sound };
}

function observed(
  { board, circuit, choice, photographs, answers, things: _, ...rest }: InspectionFile["observations"][number],
  boards: readonly Board[],
  people: readonly string[],
  held: InspectionFile["photographs"],
): InspectionFile["observations"][number] {
  const at = board === undefined ? undefined : boards[board.length % boards.length];
  const within = circuit === undefined ? undefined : at?.circuits[0];
  return {
    ...rest,
    ...(at === undefined ? {} : { board: at.id }),
    ...(within === undefined ? {} : { circuit: within.id }),
    // Answered for at the observation's own place.
    ...(answers === undefined ? {} : { answers: answers.map(({ check }) => ({ check })) }),
    ...(choice === undefined || people.length === 0 ? {} : { choice: { ...choice, by: pick(people, choice.by) } }),
    ...(photographs === undefined ? {} : { photographs: held.slice(0, 2).map(({ sha256 }) => sha256) }),
  };
}

/** Readings and steps for safety name people and instruments that are there, or none. */
function settled(value: unknown, taken: Readonly<Record<"by" | "with", readonly string[]>>): unknown {
  if (Array.isArray(value)) return value.map((inner) => settled(inner, taken));
  if (typeof value !== "object" || value === null) return value;
  const reading = "shown" in value || ("at" in value && !("classification" in value));
  return Object.fromEntries(
    Object.entries(value).flatMap(([name, inner]) => {
      if (!reading || (name !== "by" && name !== "with")) return [[name, settled(inner, taken)]];
      return taken[name].length === 0 ? [] : [[name, pick(taken[name], String(inner))]];
    }),
  );
}
