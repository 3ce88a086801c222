import type { Misfit, MisfitKind, OpenPoint } from "@good-grounds/core";
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

/** Checks that ask whether readings agree. */
const OF_AGREEMENT: readonly string[] = ["zs-agreement", "r1r2-length", "ring-continuity"];

/** Checks of the same readings, by what does not agree: whoever speaks of one speaks of the readings. */
const OF_THE_SAME: Partial<Readonly<Record<MisfitKind, readonly string[]>>> = {
  "circuit-readings": OF_AGREEMENT,
  ring: OF_AGREEMENT,
  "board-loop": OF_AGREEMENT,
  "leads-not-nulled": OF_AGREEMENT,
  insulation: ["insulation-resistance"],
  "residual-device": ["rcd-time"],
  "supply-loop": ["external-impedance"],
};

/** A point of readings that do not agree, and the checks that are not met for the same cause there. */
export interface MisfitPoint {
  readonly point: OpenPoint & { readonly kind: "misfit" };
  readonly checks: readonly string[];
}

/**
 * Readings that clearly cannot all be true and of which no observation speaks; those of one place, and those of one
 * explanation, together.
 */
export function misfitPoints(installation: Installation, misfits: readonly Misfit[]): readonly MisfitPoint[] {
  const points = new Map<string, MisfitPoint>();
  const taken = new Set<string>();
  for (const misfit of misfits) {
    const { kind, path, explanations } = misfit;
    const at = `${kind} ${path.join("/")}`;
    if (taken.has(at) || !asksForAWord(misfit) || isSpokenOf(misfit, installation)) continue;
    taken.add(at);
    const [first] = explanations;
    const lead = first === undefined ? null : { id: first.id, words: first.words };
    const key = `${kind} ${lead?.id ?? at}`;
    const places = [...(points.get(key)?.point.places ?? []), path];
    points.set(key, { point: { kind: "misfit", misfit: kind, lead, places }, checks: checksWith(kind, lead?.id) });
  }
  return [...points.values()];
}

/** Checks that fail because the readings do not agree; a length read wrongly makes the drop wrong that is worked out from it. */
function checksWith(kind: MisfitKind, lead = ""): readonly string[] {
  const same = (OF_THE_SAME[kind] ?? []).filter((check) => OF_AGREEMENT.includes(check));
  return /length/.test(lead) ? [...same, "voltage-drop"] : same;
}

/** Whether an observation names what does not agree by its kind, or a check of the same readings, at their place. */
function isSpokenOf({ kind, path }: Misfit, { observations, boards, circuits }: Installation): boolean {
  const circuit = circuits.find((one) => isWithin(path, one.path));
  const board = circuit?.board ?? boards.find((one) => isWithin(path, one.path));
  return observations.some(
    (observation) =>
      isAnswer(observation, true) &&
      (observation.answers ?? []).some((named) => {
        if (named.check !== kind && OF_THE_SAME[kind]?.includes(named.check) !== true) return false;
        const at = named.board ?? observation.board;
        const of = named.circuit ?? (named.board === undefined ? observation.circuit : undefined);
        return at === board?.id && of === circuit?.id;
      }),
  );
}

function isWithin(path: Misfit["path"], place: Misfit["path"]): boolean {
  return place.every((step, i) => path[i] === step);
}
