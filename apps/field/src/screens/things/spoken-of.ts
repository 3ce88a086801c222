import { join, membersOf, ORDER } from "../../record/document.ts";
import type { Record as JobRecord } from "../../record/record.ts";
import { newName } from "../../shell/job.ts";
import { BONDED } from "../../words/installation.ts";
import { spaced } from "../../words/members.ts";
import type { Change } from "../installation/changes.ts";
import { rcdName } from "../installation/rcd-name.ts";
import { thingName, thingsIn } from "./recorded.ts";

/** Something of the job that an observation can speak of. */
export interface Speakable {
  readonly id: string;
  /** The board of an RCD, whose id is only known there. */
  readonly board?: string;
  readonly words: string;
  /** Whether it is at the place of the observation. */
  readonly isHere: boolean;
  /** Where it is filled in, below the job. */
  readonly address: readonly string[];
}

/** What an observation names, with its place in the record. */
export interface Named {
  readonly at: string;
  readonly id: string;
  readonly board: string | undefined;
}

const text = (record: JobRecord, path: string) => {
  const value = record.value(path);
  return typeof value === "string" ? value : undefined;
};

/** Everything an observation can speak of: things, main bonds, RCDs of boards; what it brings in itself is spoken of anyway. */
export function speakable(record: JobRecord, observation: string): readonly Speakable[] {
  const [board, circuit] = [text(record, join(observation, "board")), text(record, join(observation, "circuit"))];
  const things = thingsIn(record)
    .filter(({ path }) => !path.startsWith(`${observation}/`))
    .map((thing): Speakable => {
      const [at, of] = [text(record, join(thing.path, "board")), text(record, join(thing.path, "circuit"))];
      return {
        id: thing.name,
        words: thingName(record, thing),
        isHere: at === board && (of === undefined || circuit === undefined || of === circuit),
        address: ["things", thing.kind, thing.name],
      };
    });
  const bonds = membersOf(record, "supply/bonding").map((id): Speakable => {
    const to = text(record, `supply/bonding/${id}/to`) ?? id;
    return { id, words: `${BONDS} ${BONDED[to] ?? spaced(to)}`, isHere: board === undefined, address: ["supply"] };
  });
  const rcds = membersOf(record, "boards").flatMap((at) =>
    membersOf(record, `boards/${at}/rcds`).map(
      (id): Speakable => ({
        id,
        board: at,
        words: rcdName(record, `boards/${at}`, id),
        isHere: at === board,
        address: ["installation", at],
      }),
    ),
  );
  return [...things, ...bonds, ...rcds];
}

const BONDS = "Main bonding to";

/** What an observation names, in its order. */
export function namedBy(record: JobRecord, observation: string): readonly Named[] {
  const list = join(observation, "things");
  return membersOf(record, list).map((member) => {
    const at = join(list, member);
    return { at, id: text(record, join(at, "thing")) ?? "", board: text(record, join(at, "board")) };
  });
}

/** Whether a name means this: an RCD of the observation's own board needs no board beside it. */
export function means(record: JobRecord, observation: string, { id, board }: Named, one: Speakable): boolean {
  if (id !== one.id) return false;
  if (one.board === undefined) return board === undefined;
  return (board ?? text(record, join(observation, "board"))) === one.board;
}

/** The changes by which an observation speaks of something. Two who tick the same write the same member. */
export function speakOf(record: JobRecord, observation: string, { id, board }: Speakable): readonly Change[] {
  const list = join(observation, "things");
  const plain = board === undefined ? id : `${board}.${id}`;
  const isTaken = membersOf(record, list).includes(plain);
  const at = join(list, isTaken ? newName("t") : plain);
  return [
    [at, true],
    [join(at, ORDER), membersOf(record, list).length],
    [join(at, "thing"), id],
    ...(board === undefined ? [] : [[join(at, "board"), board] as const]),
    // How many were meant when it was last ticked is not said of it now.
    ...(typeof record.value(join(at, "quantity")) === "number" ? [[join(at, "quantity"), null] as const] : []),
  ];
}
