import {
  type Compiled,
  type CompiledPath,
  type Expression,
  type Knowledge,
  possibleLeaves,
  ruleIn,
  stateIs,
} from "@good-grounds/core";

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

const WHOLE = "basic-protection";
const OUTWARDS = ["covering-layer", "enclosure-layer", "distance-layer", "access-layer"];

/**
 * The layers of basic protection as far as they are known, to be drawn; undefined for a subject that does not rest on
 * them, and where no route that rests on them is there. Where what they come to is settled, layers of which nothing is known do not matter and are left out.
 */
export function layersBetween(compiled: Compiled, knowledge: Knowledge): LayersBetween | undefined {
  const { states = {} } = compiled.subject;
  if (![WHOLE, ...OUTWARDS].every((name) => Object.hasOwn(states, name))) return undefined;
  if (!compiled.paths.some((path) => restsOnThem(path) && mayBeThere(path, compiled, knowledge))) return undefined;
  const { state, words } = standingOf(WHOLE, compiled, knowledge);
  const layers = OUTWARDS.map((name) => standingOf(name, compiled, knowledge));
  const several = layers.filter((one) => one.state === "one-event").length > 1;
  return {
    state,
    words,
    because: state === "one-event" && several ? whyNotAdded(compiled, knowledge) : "",
    layers: state === "not-known" ? layers : layers.filter((one) => one.state !== "not-known"),
  };
}

function restsOnThem({ path }: CompiledPath): boolean {
  return path.layers.some(({ gone }) => gone.op === "state" && gone.state === WHOLE);
}

function mayBeThere({ exists }: CompiledPath, compiled: Compiled, { masks }: Knowledge): boolean {
  return (possibleLeaves(compiled, exists, masks) & (1 << 1)) !== 0;
}

/** Why layers are not added up, by the covering of the live part. */
const NOT_ADDED: readonly (readonly [covering: string, words: string])[] = [
  ["basic-sound", "what acts on the insulation gets past what is around it"],
  ["basic-damaged", "insulation that has begun to fail adds up with nothing short of a sound enclosure"],
  ["bare", "whoever gets to the place also opens what is around it"],
];

function whyNotAdded(compiled: Compiled, { masks }: Knowledge): string {
  const variable = compiled.index.get("fact live-covering");
  const values = variable === undefined ? [] : (compiled.variables[variable]?.cells.values ?? []);
  const mask = variable === undefined ? 0 : (masks[variable] ?? 0);
  const only = values.filter((_, i) => (mask & (1 << i)) !== 0);
  return NOT_ADDED.find(([covering]) => only.length === 1 && only[0] === covering)?.[1] ?? "";
}

const RULES = new Map<string, Expression>();

/** The rule that a state has a value, made once: a compiled subject remembers rules by themselves. */
function ruleOf(state: string, value: string): Expression {
  const made = RULES.get(`${state} ${value}`) ?? stateIs(state, value);
  RULES.set(`${state} ${value}`, made);
  return made;
}

function standingOf(name: string, compiled: Compiled, { masks }: Knowledge): LayerBetween {
  const state = compiled.subject.states?.[name];
  if (state === undefined) return { name, state: "not-known", words: "" };
  const possible = Object.keys(state.values).filter(
    (value) => (possibleLeaves(compiled, ruleIn(ruleOf(name, value), compiled), masks) & (1 << 1)) !== 0,
  );
  const [only] = possible;
  if (possible.length !== 1 || only === undefined) return { name: state.words, state: "not-known", words: "" };
  return { name: state.words, state: only as LayerStanding, words: state.values[only]?.words ?? "" };
}
