import type { InspectionFile } from "../schema/file.ts";
import { migratedSurgeId } from "./v2-to-v3.ts";

type SurgeDevice = NonNullable<NonNullable<InspectionFile["things"]>["surgeDevices"]>[number];

/**
 * A file as version 2 would have written it, member by member in its order; undefined where it says anything that version 2
 * could not say. Signatures given to a file of version 2 carry a hash of that. No two files have the same older form.
 */
export function asVersion2(file: InspectionFile): object | undefined {
  const { things, ...rest } = file;
  const { surgeDevices = [], ...others } = things ?? {};
  if (things !== undefined && (surgeDevices.length === 0 || Object.keys(others).length > 0)) return undefined;
  if (saysMore(file)) return undefined;
  const boards = file.boards.map((board, i) => {
    const device = surgeDevices.find(({ id }) => id === migratedSurgeId(i));
    return device === undefined ? board : withSurge(board, device);
  });
  const expected = file.boards.flatMap((board, i) =>
    surgeDevices.filter((one) => isMigrated(one, board.id, migratedSurgeId(i))),
  );
  // Each device is just what the migration makes, and they stand in its order.
  if (expected.length !== surgeDevices.length || expected.some((one, i) => one !== surgeDevices[i])) return undefined;
  return { ...rest, version: 2, boards };
}

function isMigrated(device: SurgeDevice, board: string, id: string): boolean {
  return device.id === id && device.board === board && device.fitted !== undefined && Object.keys(device).length === 3;
}

/** Where the statement stood among the members of a board. */
const BEFORE: ReadonlySet<string> = new Set([
  "id",
  "name",
  "location",
  "fedFrom",
  "phases",
  "enclosure",
  "mainSwitch",
  "rcds",
]);

function withSurge(board: InspectionFile["boards"][number], { fitted }: SurgeDevice): object {
  const surgeProtection = fitted === true ? "fitted" : fitted === false ? "not-fitted" : fitted;
  const members = Object.entries(board);
  return Object.fromEntries([
    ...members.filter(([name]) => BEFORE.has(name)),
    ["surgeProtection", surgeProtection],
    ...members.filter(([name]) => !BEFORE.has(name)),
  ]);
}

/** Members of other places that version 2 did not have. */
function saysMore({ boards, supply, observations }: InspectionFile): boolean {
  const rcds = boards.flatMap((board) => [
    ...(board.rcds ?? []),
    ...board.circuits.flatMap(({ rcd }) => (rcd !== undefined && rcd !== "none" && "own" in rcd ? [rcd.own] : [])),
  ]);
  return (
    rcds.some((rcd) => hasAny(rcd, "direction", "backfed", "testability", "whyNotTested")) ||
    supply.bonding.some((bond) => hasAny(bond, "service", "partResistance", "condition")) ||
    observations.some((one) => hasAny(one, "things", "brings"))
  );
}

function hasAny(holder: object, ...names: readonly string[]): boolean {
  return names.some((name) => Object.hasOwn(holder, name));
}
