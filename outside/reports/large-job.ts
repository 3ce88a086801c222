import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { crc32, deflateSync } from "node:zlib";
import type { InspectionFile } from "@good-grounds/inspection";
import { parseInspection } from "@good-grounds/inspection";
import type { Photograph } from "@good-grounds/report/document";

export const BOARDS = 7;
export const CIRCUITS = 120;
export const OBSERVATIONS = 60;

/** A large building made of the workshop: seven boards, 120 circuits, 60 observations, a photograph at each. */
export function largeJob(): { readonly file: InspectionFile; readonly photographs: ReadonlyMap<string, Photograph> } {
  const parsed = parseInspection(readFileSync(new URL("../../examples/workshop.json", import.meta.url), "utf8"));
  if (!parsed.ok) throw new Error("the example is not sound");
  const { file } = parsed;
  const circuits = file.boards.flatMap((board) =>
    board.circuits.filter(({ rcd }) => rcd === undefined || rcd === "none"),
  );
  const [first] = file.boards;
  const [observation] = file.observations;
  if (first === undefined || observation === undefined) throw new Error("the example has nothing to copy");
  const boards = Array.from({ length: BOARDS }, (_, i) => boardOf(first, circuits, i));
  const images = Array.from({ length: OBSERVATIONS }, (_, i) => noise(i));
  const photographs = new Map(images.map((bytes) => [hashOf(bytes), { bytes, type: "image/png" } as const]));
  const { things: _, brings: __, answers: ___, ...plain } = observation;
  return {
    file: {
      ...file,
      boards,
      things: {},
      inspected: file.inspected.map(({ observations: ____, ...one }) =>
        one.outcome === "observed" ? { ...one, outcome: "in-order" } : one,
      ),
      observations: Array.from({ length: OBSERVATIONS }, (_____, i) => ({
        ...plain,
        id: `seen-${i}`,
        place: `room ${i + 1} on floor ${i % 5}`,
        board: `board-${i % BOARDS}`,
        circuit: `c${i % 10}`,
        photographs: [hashOf(images[i] as Uint8Array)],
        choice: {
          classification: (["C2", "C3", "FI"] as const)[i % 3] as "C2",
          reason: `as seen in room ${i + 1}`,
          by: file.people[0]?.id ?? "",
        },
      })),
      photographs: images.map((bytes, i) => ({
        sha256: hashOf(bytes),
        name: `room-${i + 1}.png`,
        description: `what was seen in room ${i + 1}`,
      })),
      signatures: [],
    },
    photographs,
  };
}

type Board = InspectionFile["boards"][number];

function boardOf(first: Board, circuits: Board["circuits"], i: number): Board {
  const share = Math.floor(CIRCUITS / BOARDS) + (i < CIRCUITS % BOARDS ? 1 : 0);
  const { rcds: _, ...bare } = first;
  return {
    ...bare,
    id: `board-${i}`,
    name: `Board ${i + 1}`,
    location: `riser ${i + 1}`,
    fedFrom: i === 0 ? "supply" : { board: "board-0", circuit: `c${i}` },
    circuits: Array.from({ length: share }, (__, j) => ({
      ...(circuits[(i * 3 + j) % circuits.length] as Board["circuits"][number]),
      id: `c${j}`,
      designation: `${j + 1}`,
      description: `load ${j + 1} of board ${i + 1}`,
    })),
  };
}

/** A photograph that nothing can press together, as large as a share of what is allowed. */
function noise(seed: number): Uint8Array {
  const side = 330;
  const rows = Buffer.alloc(side * (1 + 3 * side));
  let state = seed + 1;
  for (let i = 0; i < rows.length; i++) {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    rows[i] = i % (1 + 3 * side) === 0 ? 0 : state >>> 24;
  }
  const head = Buffer.alloc(13);
  head.writeUInt32BE(side, 0);
  head.writeUInt32BE(side, 4);
  head.set([8, 2, 0, 0, 0], 8);
  const signature = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  return new Uint8Array(
    Buffer.concat([signature, chunk("IHDR", head), chunk("IDAT", deflateSync(rows)), chunk("IEND", Buffer.alloc(0))]),
  );
}

function chunk(name: string, data: Buffer): Buffer {
  const named = Buffer.concat([Buffer.from(name), data]);
  const [length, sum] = [Buffer.alloc(4), Buffer.alloc(4)];
  length.writeUInt32BE(data.length);
  sum.writeUInt32BE(crc32(named));
  return Buffer.concat([length, named, sum]);
}

function hashOf(bytes: Uint8Array): string {
  return createHash("sha256").update(bytes).digest("hex");
}
