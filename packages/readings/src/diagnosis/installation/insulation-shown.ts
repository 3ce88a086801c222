import type { MisfitReading } from "@good-grounds/core";
import type { Reading } from "./fitted-reading.ts";

/** An insulation reading as a misfit shows it. */
export function shownInsulation(
  name: string,
  { evidence, value }: Reading,
  band: Pick<MisfitReading, "value" | "low" | "high">,
): MisfitReading {
  const { path, text } = evidence.detail;
  return { name, path, unit: "ohm", shown: text, measured: value, ...band };
}
