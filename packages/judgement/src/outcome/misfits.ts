import type { Misfit, OpenPoint } from "@good-grounds/core";
import type { Installation } from "@good-grounds/inspection";
import { isAnswer } from "./is-answer.ts";

/** What explains readings by something that is there and harms nobody: they are true as they stand. */
const HARMLESS =
  /^(?:parallel-path|parallel-path-in-both-tests|other-earth|bonding-in-parallel|earth-in-parallel|warm-conductors|equipment-connected|made-so|spur)(?:-at-.*)?$/;

/** Whether readings need a word: nothing harmless is told apart from every other explanation of them. */
function asksForAWord({ clear, kind, toldApart, explanations: [lead] }: Misfit): boolean {
  // Polarity that differs from place to place is told as a contradiction of its entries.
  if (!clear || kind === "polarity") return false;
  return lead === undefined || !(toldApart && lead.innocent && HARMLESS.test(lead.id));
}

/** Checks that ask whether readings agree: whoever speaks of one speaks of the readings. */
const OF_AGREEMENT: readonly string[] = ["zs-agreement", "r1r2-length", "ring-continuity"];

/** A point of readings that do not agree, and the checks that are not met for the same cause there. */
export interface MisfitPoint {
  readonly point: OpenPoint & { readonly kind: "misfit" };
  readonly checks: readonly string[];
}

/** Readings that clearly cannot all be true and of which no observation speaks; those of one explanation together. */
export function misfitPoints(installation: Installation, misfits: readonly Misfit[]): readonly MisfitPoint[] {
  const points = new Map<string, MisfitPoint>();
  for (const misfit of misfits) {
    const { kind, path, explanations } = misfit;
    if (!asksForAWord(misfit) || isSpokenOf(misfit, installation)) continue;
    const [lead] = explanations;
    // A length read wrongly makes the drop wrong that is worked out from it.
    const checks = lead !== undefined && /length/.test(lead.id) ? [...OF_AGREEMENT, "voltage-drop"] : OF_AGREEMENT;
    const key = `${kind} ${lead?.id ?? path.join("/")}`;
    const places = [...(points.get(key)?.point.places ?? []), path];
    const point = {
      kind: "misfit",
      misfit: kind,
      lead: lead === undefined ? null : { id: lead.id, words: lead.words },
      places,
    } as const;
    points.set(key, { point, checks });
  }
  return [...points.values()];
}

/** Whether an observation names the readings, or a check of agreement, at their place. */
function isSpokenOf({ kind, path }: Misfit, { observations, boards, circuits }: Installation): boolean {
  const circuit = circuits.find((one) => isWithin(path, one.path));
  const board = circuit?.board ?? boards.find((one) => isWithin(path, one.path));
  return observations.some(
    (observation) =>
      isAnswer(observation, true) &&
      (observation.answers ?? []).some((named) => {
        if (named.check !== kind && !OF_AGREEMENT.includes(named.check)) return false;
        const at = named.board ?? observation.board;
        const of = named.circuit ?? (named.board === undefined ? observation.circuit : undefined);
        return at === board?.id && of === circuit?.id;
      }),
  );
}

function isWithin(path: Misfit["path"], place: Misfit["path"]): boolean {
  return place.every((step, i) => path[i] === step);
}
