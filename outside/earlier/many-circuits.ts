import { resolveInstallation, type WholeInstallation } from "@good-grounds/inspection";
import type { TrueInstallation } from "../../examples/simulate/installation.ts";
import { inspected } from "./random-house.ts";

/** An inspection of a house whose first circuit stands there over and over: two boards of so many circuits each. */
export function manyCircuits(
  house: TrueInstallation,
  when: { day: string; seed: number },
  each: number,
): WholeInstallation {
  const installation = inspected(house, when);
  const [board] = installation.file.boards;
  const [one] = board?.circuits ?? [];
  if (board === undefined || one === undefined) throw new Error("no circuit to copy");
  const circuits = Array.from({ length: each }, (_, i) => ({ ...one, id: `x${i}`, designation: String(i) }));
  return resolveInstallation({
    ...installation.file,
    boards: [0, 1].map((k) => ({ ...board, id: `b${k}`, name: `B${k}`, fedFrom: "supply" as const, circuits })),
  });
}
