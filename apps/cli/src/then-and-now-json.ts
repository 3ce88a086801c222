import {
  type AgainstEarlier,
  type CircuitAt,
  isKnown,
  pointer,
  type ReadingChange,
  type ThenAndNow,
  type Trend,
} from "@good-grounds/core";
import { groundsJson, number } from "./json.ts";

/**
 * The member `thenAndNow` with the comparison with earlier inspections; no member where there is none. Of a reading,
 * `grounds` begins with the two that were compared.
 */
export function thenAndNowJson(comparison: ThenAndNow | undefined, grounds: boolean): object {
  if (comparison === undefined) return {};
  const { level, assurance, nextOn, earlier, trends } = comparison;
  const thenAndNow = {
    level,
    assurance,
    nextOn,
    earlier: earlier.map((one) => againstJson(one, grounds)),
    trends: trends.map(trendJson),
  };
  return { thenAndNow };
}

function againstJson(against: AgainstEarlier, grounds: boolean): object {
  const { id, inspectedOn, otherAddress, byNameOnly } = against;
  return {
    file: id,
    inspectedOn,
    otherAddress,
    byNameOnly,
    circuits: against.circuits.map(({ kind, past, now, confidence, because, readings }) => ({
      kind,
      past: past.map(circuitJson),
      now: now.map(circuitJson),
      confidence,
      because,
      readings: readings.map((one) => changeJson(one, grounds)),
    })),
    unsettled: against.unsettled.map(({ past, now }) => ({ past: past.map(circuitJson), now: now.map(circuitJson) })),
    onlyThen: against.onlyThen.map(circuitJson),
    onlyNow: against.onlyNow.map(circuitJson),
    supply: against.supply.map((one) => changeJson(one, grounds)),
    boards: against.boards.map(({ path, past, now, readings }) => ({
      place: pointer(path),
      past,
      now,
      readings: readings.map((one) => changeJson(one, grounds)),
    })),
  };
}

function circuitJson({ path, board, id, designation, description }: CircuitAt): object {
  return { place: pointer(path), board, id, designation, description };
}

function changeJson(change: ReadingChange, grounds: boolean): object {
  const { reading, about, past, now, why, scale, amount, standard, chance, notes } = change;
  const side = (evidence: ReadingChange["past"]) =>
    isKnown(evidence)
      ? { value: number(evidence.value), low: number(evidence.low), high: number(evidence.high) }
      : null;
  return {
    reading,
    about,
    past: side(past),
    now: side(now),
    change: change.change,
    why,
    scale,
    amount: number(amount),
    standard: number(standard),
    chance: number(chance),
    notes,
    ...(grounds ? { grounds: groundsJson([past, now]) } : {}),
  };
}

function trendJson(trend: Trend): object {
  const { path, reading, points, perYear, direction, twoPoints, projected, limit, worse, crossing } = trend;
  return {
    place: pointer(path),
    reading,
    points,
    perYear:
      perYear === null ? null : { value: number(perYear.value), low: number(perYear.low), high: number(perYear.high) },
    direction,
    twoPoints,
    projected: projected.map(({ on, value, low, high }) => ({ on, value, low: number(low), high: number(high) })),
    limit: isKnown(limit) ? number(limit.value) : null,
    worse,
    crossing,
  };
}
