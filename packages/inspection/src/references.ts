import type { Issue, Path } from "@good-grounds/core";
import { duplicate, refer } from "./reference-issue.ts";
import type { InspectionFile } from "./schema/file.ts";
import { thingReferences } from "./things/references.ts";

/** The ids other entries refer to, by kind; of circuits those of each board. */
interface Known {
  readonly people: ReadonlySet<string>;
  readonly instruments: ReadonlySet<string>;
  readonly observations: ReadonlySet<string>;
  readonly photographs: ReadonlySet<string>;
  readonly boards: ReadonlySet<string>;
  readonly circuits: ReadonlyMap<string, ReadonlySet<string>>;
}

/** Ids that stand more than once among their kind, and references that lead nowhere, all of them, each with its path. */
export function referenceIssues(file: InspectionFile): readonly Issue[] {
  const issues: Issue[] = [];
  const known = knownIds(issues, file);
  const { people, instruments } = known;
  boardReferences(issues, file, known);
  issues.push(...feedingCycles(file), ...thingReferences(file));
  for (const [i, item] of file.inspected.entries()) {
    for (const [j, seen] of (item.observations ?? []).entries()) {
      refer(issues, known.observations, "observation", seen, ["inspected", i, "observations", j]);
    }
  }
  for (const i of file.observations.keys()) observationReferences(issues, file, i, known);
  for (const [i, signature] of file.signatures.entries()) {
    refer(issues, people, "person", signature.person, ["signatures", i, "person"]);
  }
  for (const [path, by] of safetyReferences(file)) refer(issues, people, "person", by, path);
  // Readings are many and their references nearly always sound: places are worked out only where one is not.
  if (takenFrom(file).every(([, part]) => takenAreKnown(part, known))) return issues;
  for (const [path, key, value] of takenReferences(file)) {
    if (key === "by") refer(issues, people, "person", value, path);
    else refer(issues, instruments, "instrument", value, path);
  }
  return issues;
}

/** The ids of the file; those that stand twice are issues. */
function knownIds(issues: Issue[], file: InspectionFile): Known {
  const people = unique(issues, "person", file.people, ["people"]);
  const instruments = unique(issues, "instrument", file.instruments, ["instruments"]);
  const observations = unique(issues, "observation", file.observations, ["observations"]);
  unique(issues, "limitation", file.limitations, ["limitations"]);
  unique(issues, "bonding conductor", file.supply.bonding, ["supply", "bonding"]);
  unique(issues, "other source", file.supply.otherSources ?? [], ["supply", "otherSources"]);
  const photographs = unique(
    issues,
    "photograph",
    file.photographs.map((photo) => ({ id: photo.sha256 })),
    ["photographs"],
  );
  const boards = unique(issues, "board", file.boards, ["boards"]);
  const circuits = new Map(
    file.boards.map((board, i) => [
      board.id,
      unique(issues, `circuit of board ${board.id}`, board.circuits, ["boards", i, "circuits"]),
    ]),
  );
  return { people, instruments, observations, photographs, boards, circuits };
}

/** What feeds each board, and the RCD of the board a circuit hangs on. */
function boardReferences(issues: Issue[], file: InspectionFile, { boards, circuits }: Known): void {
  for (const [i, board] of file.boards.entries()) {
    const path: Path = ["boards", i];
    if (board.fedFrom !== "supply") {
      refer(issues, boards, "board", board.fedFrom.board, [...path, "fedFrom", "board"]);
      const known = circuits.get(board.fedFrom.board);
      if (known) refer(issues, known, "circuit", board.fedFrom.circuit, [...path, "fedFrom", "circuit"]);
    }
    const rcds = unique(issues, `RCD of board ${board.id}`, board.rcds ?? [], [...path, "rcds"]);
    for (const [j, circuit] of board.circuits.entries()) {
      const rcd = circuit.rcd;
      if (rcd !== undefined && rcd !== "none" && "board" in rcd) {
        refer(issues, rcds, "RCD of this board", rcd.board, [...path, "circuits", j, "rcd", "board"]);
      }
    }
  }
}

/** Where an observation was made, what it answers for, who chose its class and its photographs. */
function observationReferences(
  issues: Issue[],
  file: InspectionFile,
  i: number,
  { people, photographs, boards, circuits }: Known,
): void {
  const seen = file.observations[i];
  if (seen === undefined) return;
  if (seen.board !== undefined) {
    refer(issues, boards, "board", seen.board, ["observations", i, "board"]);
    const known = circuits.get(seen.board);
    if (known && seen.circuit !== undefined) {
      refer(issues, known, "circuit", seen.circuit, ["observations", i, "circuit"]);
    }
  } else if (seen.circuit !== undefined) {
    issues.push({
      code: "circuit-without-board",
      path: ["observations", i, "circuit"],
      found: seen.circuit,
      expected: "the board of the circuit beside it",
      advice: 'add "board" with the id of the board this circuit belongs to',
    });
  }
  issues.push(...answerReferences(file, i));
  if (seen.choice !== undefined) refer(issues, people, "person", seen.choice.by, ["observations", i, "choice", "by"]);
  for (const [j, photo] of (seen.photographs ?? []).entries()) {
    refer(issues, photographs, "photograph", photo, ["observations", i, "photographs", j]);
  }
}

/** Places and parts that an observation answers for: each has to be there. */
function answerReferences(file: InspectionFile, number: number): Issue[] {
  const issues: Issue[] = [];
  const observation = file.observations[number];
  for (const [j, { board, circuit, part }] of (observation?.answers ?? []).entries()) {
    const path: Path = ["observations", number, "answers", j];
    if (board !== undefined)
      refer(issues, new Set(file.boards.map(({ id }) => id)), "board", board, [...path, "board"]);
    const at = file.boards.find(({ id }) => id === (board ?? observation?.board));
    if (circuit !== undefined)
      refer(issues, new Set(at?.circuits.map(({ id }) => id)), "circuit of that board", circuit, [...path, "circuit"]);
    if (part === undefined) continue;
    const parts = at === undefined ? file.supply.bonding : (at.rcds ?? []);
    const known = new Set(parts.flatMap(({ id }) => id ?? []));
    refer(issues, known, at === undefined ? "bonding conductor" : "RCD of that board", part, [...path, "part"]);
  }
  return issues;
}

function unique(issues: Issue[], kind: string, rows: readonly { readonly id: string }[], path: Path): Set<string> {
  const first = new Map<string, number>();
  for (const [i, { id }] of rows.entries()) {
    const earlier = first.get(id);
    if (earlier === undefined) first.set(id, i);
    else issues.push(duplicate(id, [...path, i], kind, `entry ${earlier} has the same id`));
  }
  return new Set(first.keys());
}

/** Boards that feed each other in a circle; the origin is never reached from them. */
function feedingCycles(file: InspectionFile): Issue[] {
  const parent = new Map<string, string | null>();
  for (const board of file.boards) {
    if (!parent.has(board.id)) parent.set(board.id, board.fedFrom === "supply" ? null : board.fedFrom.board);
  }
  const settled = new Set<string>();
  const issues: Issue[] = [];
  for (const [i, board] of file.boards.entries()) {
    const trail = new Set<string>();
    let at: string | null | undefined = board.id;
    while (typeof at === "string" && !settled.has(at) && !trail.has(at)) {
      trail.add(at);
      at = parent.get(at);
    }
    if (typeof at === "string" && trail.has(at)) {
      issues.push({
        code: "boards-in-a-circle",
        path: ["boards", i, "fedFrom"],
        found: [...trail, at].slice(0, 10).join(" fed from "),
        expected: "every board to lead back to the supply",
        advice: "correct which board feeds which",
      });
    }
    for (const step of trail) settled.add(step);
  }
  return issues;
}

/** Who took the steps for safety, wherever one is named. */
function* safetyReferences(file: InspectionFile): Generator<readonly [Path, string]> {
  for (const [i, { by }] of (file.precautions ?? []).entries())
    if (by !== undefined) yield [["precautions", i, "by"], by];
  for (const [i, times] of (file.earthingOff ?? []).entries())
    for (const key of ["off", "on"] as const) {
      const by = times[key]?.by;
      if (by !== undefined) yield [["earthingOff", i, key, "by"], by];
    }
  for (const [i, { circuits }] of file.boards.entries())
    for (const [j, { liveBeforeContinuity }] of circuits.entries())
      if (liveBeforeContinuity?.by !== undefined)
        yield [["boards", i, "circuits", j, "liveBeforeContinuity", "by"], liveBeforeContinuity.by];
}

/** The parts of a file in which readings stand. */
function takenFrom(file: InspectionFile): readonly (readonly [Path, unknown])[] {
  return [
    [["boards"], file.boards],
    [["supply"], file.supply],
    [["conditions"], file.conditions],
    [["things"], file.things],
    ...file.observations.map(({ brings }, i): readonly [Path, unknown] => [["observations", i, "brings"], brings]),
  ];
}

/** Whether every "by" and "with" of a reading in here leads somewhere. A document is a tree of limited depth by its schema. */
function takenAreKnown(value: unknown, known: Known): boolean {
  if (typeof value !== "object" || value === null) return true;
  if (Array.isArray(value)) return value.every((inner) => takenAreKnown(inner, known));
  if ("shown" in value) {
    const { by, with: instrument } = value as Record<string, unknown>;
    return (
      (typeof by !== "string" || known.people.has(by)) &&
      (typeof instrument !== "string" || known.instruments.has(instrument))
    );
  }
  for (const name in value) if (!takenAreKnown((value as Record<string, unknown>)[name], known)) return false;
  return true;
}

/** Every "by" and "with" of a reading, wherever it stands. */
function* takenReferences(file: InspectionFile): Generator<readonly [Path, "by" | "with", string]> {
  const waiting = [...takenFrom(file)];
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    const [path, value] = next;
    if (typeof value !== "object" || value === null) continue;
    if ("shown" in value) {
      for (const key of ["by", "with"] as const) {
        const id = (value as Record<string, unknown>)[key];
        if (typeof id === "string") yield [[...path, key], key, id];
      }
      continue;
    }
    const steps = Array.isArray(value) ? [...value.entries()] : Object.entries(value);
    for (const [step, inner] of steps.reverse()) waiting.push([[...path, step], inner]);
  }
}
