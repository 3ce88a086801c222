import type { Path } from "@good-grounds/core";
import type { Installation } from "@good-grounds/inspection";

type Ticked = Installation["inspected"][number];

/** The answer to an item of the inspection with a given outcome, and its place; undefined where it has another or none. */
export function ticked(
  { inspected }: Pick<Installation, "inspected">,
  item: string,
  outcome: Ticked["outcome"],
): { readonly path: Path; readonly reason: string | undefined } | undefined {
  const i = inspected.findIndex((one) => one.item === item && one.outcome === outcome);
  const found = inspected[i];
  return found === undefined ? undefined : { path: ["inspected", i], reason: found.reason };
}
