import { type Compared, type Evidence, expected, type Matter, type Reckoner, type Unit } from "@good-grounds/core";

/**
 * A reading of the supply against a limit that its distributor answers for. A reading beyond it convicts and one near it
 * from outside is too near to call, by the doubt of the meter as everywhere. A reading within the limit is expected to be
 * so even where the meter's doubt reaches past it: supplies beyond are rare, and nobody but the distributor could prove it,
 * by a record over days. Nothing of the installation rests on it.
 */
export function keptByDistributor<U extends Unit>(
  matter: Matter,
  reading: Evidence<U>,
  side: "atMost" | "atLeast",
  limit: Evidence<NoInfer<U>>,
  reckon: Reckoner,
): Compared {
  const proven = reckon[side](matter, reading, limit);
  if (reading.kind !== "measured" || proven.verdict !== "too-near" || proven.asRead !== "met") return proven;
  const asRead = reckon.lookedUp(reading.term, expected(reading.term, reading.value, WHY), reading);
  return reckon[side](matter, asRead, limit, "expected");
}

const WHY = "as read; the distributor answers for the limit, and supplies beyond it are rare";
