import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
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
  const images = Array.from({ length: OBSERVATIONS }, (_, i) => photograph(i));
  const photographs = new Map(images.map((bytes) => [hashOf(bytes), { bytes, type: "image/jpeg" } as const]));
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
        name: `room-${i + 1}.jpg`,
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

/** A small grey picture as JPEG. */
const GREY =
  "/9j/4AAQSkZJRgABAQAAAQABAAD/2wBDABALDA4MChAODQ4SERATGCgaGBYWGDEjJR0oOjM9PDkzODdASFxOQERXRTc4UG1RV19iZ2hnPk1xeXBkeFxlZ2P/wAALCAAMABABAREA/8QAFQABAQAAAAAAAAAAAAAAAAAAAAH/xAAUEAEAAAAAAAAAAAAAAAAAAAAA/9oACAEBAAA/AIA//9k=";

/** Bytes of a photograph as the field app keeps them, within the share that 60 of them leave each. */
const PHOTOGRAPH = 330_000;

/** A photograph of its own: the grey picture with a comment of bytes that nothing can press together. */
function photograph(seed: number): Uint8Array {
  const grey = Buffer.from(GREY, "base64");
  const comments: Buffer[] = [];
  let state = seed + 1;
  for (let left = PHOTOGRAPH - grey.length; left > 0; left -= 60_000) {
    const comment = Buffer.alloc(Math.min(60_000, left));
    for (let i = 4; i < comment.length; i++) {
      state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
      comment[i] = state >>> 24;
    }
    if (comment.length < 4) break;
    comment.writeUInt16BE(0xfffe, 0);
    comment.writeUInt16BE(comment.length - 2, 2);
    comments.push(comment);
  }
  return new Uint8Array(Buffer.concat([grey.subarray(0, 2), ...comments, grey.subarray(2)]));
}

function hashOf(bytes: Uint8Array): string {
  return createHash("sha256").update(bytes).digest("hex");
}
