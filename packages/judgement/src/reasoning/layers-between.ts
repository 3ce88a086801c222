import { type Compiled, type Expression, is, type Knowledge, possibleLeaves, ruleIn } from "@good-grounds/core";
import {
  ACCESS_LAYER,
  BASIC_PROTECTION_STATE,
  COVERING_LAYER,
  DISTANCE_LAYER,
  ENCLOSURE_LAYER,
  type SharedState,
  stateIs,
  TOUCH_FACTS,
  TOUCH_POINTS,
} from "../topics/shared/index.ts";

/** How a layer stands; `not-known` where more than one is still possible. */
type LayerStanding = "holds" | "one-event" | "gone" | "not-known";

/** One of the layers between live metal and a person. */
export interface LayerBetween {
  /** What it is, as a phrase: "what is around it". */
  readonly name: string;
  readonly state: LayerStanding;
  /** What it does, as a clause; empty where it is not known. */
  readonly words: string;
}

/** The layers between live metal and a person, from the live part outwards, and what they come to. */
export interface LayersBetween {
  readonly state: LayerStanding;
  readonly words: string;
  /** Why several layers come to no more than one; empty where they add up, or there are not several. */
  readonly because: string;
  readonly layers: readonly LayerBetween[];
}

const OUTWARDS: readonly SharedState[] = [COVERING_LAYER, ENCLOSURE_LAYER, DISTANCE_LAYER, ACCESS_LAYER];

/**
 * The layers of basic protection as far as they are known, to be drawn; undefined for a subject that does not ask what
 * they rest on. Where what they come to is settled, layers of which nothing is known do not matter and are left out.
 */
export function layersBetween(compiled: Compiled, knowledge: Knowledge): LayersBetween | undefined {
  const { facts, contested } = compiled.subject;
  const asks =
    Object.keys(TOUCH_FACTS).every((name) => Object.hasOwn(facts, name)) &&
    Object.keys(TOUCH_POINTS).every((name) => Object.hasOwn(contested, name));
  if (!asks) return undefined;
  const whole = standingOf(BASIC_PROTECTION_STATE, compiled, knowledge);
  const layers = OUTWARDS.map((state) => standingOf(state, compiled, knowledge));
  const { state, words } = whole;
  const several = layers.filter((one) => one.state === "one-event").length > 1;
  const because =
    state === "one-event" && several
      ? (NOT_ADDED.find(
          ([rule]) => possibleLeaves(compiled, ruleIn(rule, compiled), knowledge.masks) === 1 << 1,
        )?.[1] ?? "")
      : "";
  return {
    state,
    words,
    because,
    layers: state === "not-known" ? layers : layers.filter((one) => one.state !== "not-known"),
  };
}

/** Why layers are not added up, the first that holds. */
const NOT_ADDED: readonly (readonly [Expression, string])[] = [
  [is("covering", "basic-sound"), "what acts on the insulation gets past what is around it"],
  [
    is("covering", "basic-damaged"),
    "insulation that has begun to fail adds up with nothing short of a sound enclosure",
  ],
  [is("covering", "bare"), "whoever gets to the place also opens what is around it"],
];

function standingOf(state: SharedState, compiled: Compiled, { masks }: Knowledge): LayerBetween {
  const possible = Object.keys(state.values).filter((value) => {
    const rule = RULES.get(state)?.[value];
    return rule !== undefined && (possibleLeaves(compiled, ruleIn(rule, compiled), masks) & (1 << 1)) !== 0;
  });
  const [only] = possible;
  if (possible.length !== 1 || only === undefined) return { name: state.words, state: "not-known", words: "" };
  return { name: state.words, state: only as LayerStanding, words: state.values[only]?.words ?? "" };
}

/** The rules of each state, made once: a compiled subject remembers rules by themselves. */
const RULES = new Map(
  [...OUTWARDS, BASIC_PROTECTION_STATE].map((state) => [
    state,
    Object.fromEntries(Object.keys(state.values).map((value) => [value, stateIs(state, value)])),
  ]),
);
