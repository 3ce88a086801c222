import type { Circuit, Installation, ObservationEntry as Observation } from "@good-grounds/inspection";
import type { CableDrawing } from "@good-grounds/report";
import { type CableConstruction, type LayerRole, layersLeft, layersOf } from "@good-grounds/tables";

/** What is outermost where a fact of a topic says so; `through` where whatever lies between sheath and core is gone as well. */
interface Shows {
  readonly outermost: LayerRole;
  readonly through: boolean;
}

/** A fact that says down to which layer a cable is open. */
interface Asked {
  readonly fact: string;
  readonly values: Readonly<Record<string, Shows>>;
}

const CORE: Shows = { outermost: "insulation", through: true };
const METAL: Shows = { outermost: "conductor", through: true };
/** An opened sheath does not say what became of an armour below it. */
const UNDER_SHEATH: Shows = { outermost: "insulation", through: false };

/** Topics that say so, by the fact of today and those of earlier files. */
const SHOWN: Readonly<Record<string, readonly Asked[]>> = {
  "sheath-missing": [
    { fact: "live-covering", values: { "basic-sound": CORE, "basic-damaged": CORE, bare: METAL } },
    { fact: "cores", values: { whole: CORE, nicked: CORE, "live-bare": METAL } },
  ],
  "cable-damaged": [
    { fact: "live-covering", values: { "basic-sound": UNDER_SHEATH, "basic-damaged": CORE, bare: METAL } },
    { fact: "damage", values: { sheath: UNDER_SHEATH, insulation: CORE, "bare-metal": METAL } },
  ],
};

/** The section of the cable an observation is about; undefined where its construction or what is left of it is not recorded. */
export function cableOf(observation: Observation, installation: Installation): CableDrawing | undefined {
  const shows = shownIn(observation);
  const circuit = installation.circuits.find(
    ({ id, board }) => id === observation.circuit && board.id === observation.board,
  );
  const construction = circuit === undefined ? undefined : constructionOf(circuit);
  if (shows === undefined || construction === undefined) return undefined;
  const cable = layersOf(construction);
  const over = cable.layers.filter(({ around, role }) => around === "all" && role !== "sheath");
  if (!shows.through && over.length > 0) return undefined;
  const left = layersLeft(cable, shows.outermost)?.layers;
  if (left === undefined) return undefined;
  // Sleeving marks a conductor where it leaves the sheath, and keeps nobody from anything.
  const drawn = cable.layers.filter(({ role }) => role !== "identification");
  const layers = drawn.map((layer) => (left.includes(layer) ? layer : { ...layer, gone: true }));
  return { name: cable.name, shape: cable.shape, cores: cable.cores, layers };
}

function shownIn({ topic = "", facts = {} }: Observation): Shows | undefined {
  const asked = SHOWN[topic]?.find(({ fact }) => facts[fact] !== undefined);
  const answer = asked === undefined ? undefined : facts[asked.fact];
  return typeof answer === "string" ? asked?.values[answer] : undefined;
}

/** The construction where what is recorded of a circuit's cable leaves only one. */
function constructionOf({ cable }: Circuit): CableConstruction | undefined {
  const { kind, insulation, cores } = cable;
  if (kind.kind !== "fact") return undefined;
  if (kind.word === "flat-twin-and-cpc") return cores === undefined || cores === 2 ? "flat-twin-and-earth" : undefined;
  if (kind.word === "singles") return "single-insulated";
  if (kind.word === "flexible") return "flexible-cord";
  if (kind.word === "armoured" && insulation.kind === "fact") {
    if (insulation.word === "70C-thermoplastic") return "armoured-thermoplastic";
    if (insulation.word === "90C-thermosetting") return "armoured-thermosetting";
  }
  return undefined;
}
