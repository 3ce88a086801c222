import type { Fact, Path } from "@good-grounds/core";
import type { Leaves } from "../fields/leaves.ts";
import { MATTER } from "../fields/matters.ts";
import type { InspectionFile } from "../schema/file.ts";

/** One phase or three, as a word. */
export function phases(leaves: Leaves, entry: InspectionFile["supply"]["phases"], path: Path): Fact<"1" | "3"> {
  return leaves.fact(MATTER.phases, entry === 1 ? "1" : entry === 3 ? "3" : entry, path);
}
