import { Chance } from "../../examples/simulate/chance.ts";
import { randomInstallation, type WrittenFile, writtenFile } from "./random-installation.ts";

/** A file with one board of so many circuits, the readings of every one of them drawn at random and out. */
export function allOut(count: number): WrittenFile {
  const file = writtenFile(randomInstallation(3, new Chance(3)));
  const [board] = file.boards;
  const chance = new Chance(5);
  const model = board?.circuits.find(({ shape }) => shape === "radial");
  if (board === undefined || model === undefined) throw new Error("no circuit to copy");
  board.circuits = Array.from({ length: count }, (_, i) => ({
    ...structuredClone(model),
    id: `x${i}`,
    designation: String(i),
    readings: {
      r1r2: { shown: `${chance.between(0, 9).toFixed(2)} Ω` },
      zs: { shown: `${chance.between(0, 9).toFixed(2)} Ω` },
    },
  }));
  file.boards.length = 1;
  return file;
}
