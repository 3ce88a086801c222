import { fingerPosture, fingerReach, givenFromText, openingAccess } from "@good-grounds/computations";
import { type Evidence, isKnown, isKnownFact, type Verdict } from "@good-grounds/core";
import { JOINTED_FINGER } from "@good-grounds/tables";
import type { Topic } from "@good-grounds/topics";
import type { WorkedFact } from "./results.ts";
import { figuresFor } from "./worked/index.ts";

/** Section through an opening with the jointed finger in it, as far as the figures of an observation tell. Lengths in mm. */
export interface OpeningSection {
  readonly opening: number;
  readonly depth: number;
  readonly offset: number;
  readonly probe: {
    readonly name: string;
    readonly diameter: number;
    readonly links: readonly number[];
    readonly stop: readonly [width: number, thickness: number] | null;
  };
  /** Null where the finger does not enter. */
  readonly posture: { readonly inserted: number; readonly bends: readonly number[] } | null;
  readonly limit: readonly (readonly [offset: number, depth: number])[];
  readonly barrier: boolean;
  readonly verdict: Verdict;
}

const FINGER = Object.freeze({
  name: "jointed finger",
  diameter: JOINTED_FINGER.diameter,
  links: JOINTED_FINGER.links,
  stop: JOINTED_FINGER.stopFace,
});
const LENGTH = JOINTED_FINGER.links.reduce((sum, link) => sum + link, 0);
const STEP = 5;

/** The section to draw where a fact of the topic was worked out from the figures of an opening; undefined where they do not suffice. */
export function openingSection(
  topic: Topic,
  figures: Readonly<Record<string, string>>,
  worked: readonly WorkedFact[],
): OpeningSection | undefined {
  const found = worked.find(({ by }) => by === openingAccess.id);
  const made = givenFromText(openingAccess.needs, figuresFor(topic, openingAccess.id, figures));
  if (found === undefined || !made.ok) return undefined;
  const { shape, width, height, depth, offset, barrierBehind } = made.given;
  const round = isKnownFact(shape) && shape.word === "round";
  const [across, along, deep, aside] = [
    millimetres(width),
    millimetres(round ? width : height),
    millimetres(depth),
    millimetres(offset),
  ];
  if (across === undefined || along === undefined || deep === undefined || aside === undefined) return undefined;
  const [narrow, wide] = [Math.min(across, along), Math.max(across, along)];
  const reach = (at: number) => fingerReach({ narrow, wide, offset: at }).possible;
  const limit: [number, number][] = [];
  for (let at = 0; at <= LENGTH && reach(at) > 0; at += STEP) limit.push([at, reach(at)]);
  const enters = narrow >= FINGER.diameter;
  const most = Math.min(deep, reach(aside), LENGTH);
  return {
    opening: narrow,
    depth: deep,
    offset: aside,
    probe: FINGER,
    posture: enters ? (fingerPosture(most, aside) ?? fingerPosture(LENGTH, 0) ?? null) : null,
    limit,
    barrier: isKnownFact(barrierBehind) && barrierBehind.word !== "none",
    verdict: found.judgement.verdict,
  };
}

function millimetres(length: Evidence<"metre">): number | undefined {
  return isKnown(length) && Number.isFinite(length.value) ? length.value * 1000 : undefined;
}
