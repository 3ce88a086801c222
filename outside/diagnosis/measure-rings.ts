import { Chance } from "../../examples/simulate/chance.ts";
import {
  diagnoseRingReadings,
  type RingDiagnosis,
  type RingExplanation,
  type RingFault,
} from "../../packages/readings/src/diagnosis/ring/index.ts";
import { type PlantedKind, plantedRing } from "./planted-rings.ts";
import { inputOf, type Planted, type TrueRing } from "./simulated-ring.ts";

export interface Score {
  readonly kind: string;
  readonly threshold: string;
  readonly rings: number;
  /** Among the explanations that cannot be told apart from the leading one. */
  readonly found: number;
  readonly first: number;
  /** Sound rings of which a fault is said with more than even odds, or faulty ones of which another fault is. */
  readonly wrong: number;
  /** First, and nothing beside it that cannot be told apart. */
  readonly alone: number;
  /** Distance of the place stated from the true one, m, smallest first; of those first in rank. */
  readonly errors: readonly number[];
  /** How often the true place lies in the stated band. */
  readonly within: number;
  /** Milliseconds, smallest first. */
  readonly times: readonly number[];
}

/** Diagnoses so many rings of one kind. The same seed gives the same rings. */
export function scoreOf(kind: PlantedKind, rings: number, seed: number, points?: number): Score {
  const chance = new Chance(seed);
  let [found, first, alone, wrong, within] = [0, 0, 0, 0, 0];
  const [errors, times]: [number[], number[]] = [[], []];
  for (let i = 0; i < rings; i++) {
    const ring = plantedRing(kind, chance, points);
    const input = inputOf(ring, chance);
    const started = performance.now();
    const diagnosis = diagnoseRingReadings(input);
    times.push(performance.now() - started);
    const rank = rankOf(diagnosis, ring.planted);
    if (rank < diagnosis.leading) found++;
    if (rank !== 0 && (diagnosis.explanations[0]?.probability ?? 0) > 0.5) wrong++;
    if (rank !== 0) continue;
    first++;
    if (diagnosis.leading === 1) alone++;
    if (!kind.placed) continue;
    const { error, covered } = placeError(diagnosis.explanations[0] as RingExplanation, ring);
    errors.push(error);
    if (covered) within++;
  }
  const sorted = (values: number[]) => values.sort((a, b) => a - b);
  const { name, threshold } = kind;
  return {
    kind: name,
    threshold,
    rings,
    found,
    first,
    alone,
    wrong,
    errors: sorted(errors),
    within,
    times: sorted(times),
  };
}

export function quantile(sorted: readonly number[], part: number): number {
  return sorted[Math.min(sorted.length - 1, Math.floor(part * sorted.length))] ?? Number.NaN;
}

/** Place in the ranking of the explanation that names the planted fault and nothing else; infinite where it is not there. */
function rankOf({ explanations }: RingDiagnosis, planted: Planted): number {
  const rank = explanations.findIndex(({ faults }) =>
    planted.kind === "sound" ? faults.length === 0 : faults.length === 1 && isPlanted(faults[0] as RingFault, planted),
  );
  return rank < 0 ? Number.POSITIVE_INFINITY : rank;
}

const NAMED = ["conductor", "conductors", "pair", "pairs", "point", "readings"] as const;

function isPlanted(fault: RingFault, planted: Planted): boolean {
  if (fault.kind !== planted.kind) return false;
  const [stated, put] = [fault, planted] as unknown as readonly [Record<string, unknown>, Record<string, unknown>];
  return NAMED.every((key) => JSON.stringify(stated[key]) === JSON.stringify(put[key]));
}

/** How far the stated place is from the true one, m; for an interconnection the worse of its two ends. */
function placeError({ faults }: RingExplanation, { planted, points, metres }: TrueRing) {
  const [fault] = faults as [RingFault];
  if (planted.kind === "interconnection" && fault.kind === "interconnection") {
    const ends = [
      [fault.from, points[planted.from]],
      [fault.to, points[planted.to]],
    ] as const;
    const apart = ends.map(([place, truth]) => Math.abs((place?.metres?.value ?? 0) - (truth ?? 0)));
    const covered = ends.every(
      ([place, truth]) => (place?.metres?.low ?? 0) <= (truth ?? 0) && (truth ?? 0) <= (place?.metres?.high ?? 0),
    );
    return { error: Math.max(...apart), covered };
  }
  if ("leg" in planted && "place" in fault) {
    const stops = [0, ...points, metres];
    const truth = ((stops[planted.leg] ?? 0) + (stops[planted.leg + 1] ?? 0)) / 2;
    return {
      error: Math.abs((fault.place?.metres?.value ?? 0) - truth),
      covered: fault.place?.legs.includes(planted.leg) ?? false,
    };
  }
  // A point is named or it is not: it stands where it stands.
  return { error: 0, covered: true };
}
