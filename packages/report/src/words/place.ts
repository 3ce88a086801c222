import type { Path } from "@good-grounds/core";
import type { Installation } from "@good-grounds/inspection";
import { WORDS } from "../locales/en.ts";

/** A place in the file as people call it: "CU, circuit 4, zs". */
export function placeWords(path: Path, installation: Installation): string {
  const [head, i, kind, j, ...rest] = path;
  if (head === "boards" && typeof i === "number") {
    const board = installation.boards[i];
    const name = board?.name || `board ${i + 1}`;
    if (kind === "circuits" && typeof j === "number") {
      const circuit = board?.circuits[j];
      return [name, `circuit ${circuit?.designation || j + 1}`, ...tail(rest)].join(", ");
    }
    if (kind === "rcds" && typeof j === "number") {
      return [name, WORDS.rcd(board?.rcds[j]?.id ?? String(j + 1)), ...tail(rest)].join(", ");
    }
    return [name, ...tail(path.slice(2))].join(", ");
  }
  if (head === "supply") {
    const bond = i === "bonding" && typeof kind === "number" ? installation.supply.bonding[kind] : undefined;
    if (bond !== undefined) return [WORDS.bond(bond.to ?? bond.id), ...tail(path.slice(3))].join(", ");
    return ["supply", ...tail(path.slice(1))].join(", ");
  }
  return tail(path).join(", ") || "file";
}

/** Member names as words, without the levels that only hold others. */
function tail(steps: Path): string[] {
  return steps
    .filter((step) => step !== "readings" && step !== "own")
    .map((step) =>
      typeof step === "number" ? String(step + 1) : step.replaceAll(/([a-z])([A-Z])/g, "$1 $2").toLowerCase(),
    );
}
