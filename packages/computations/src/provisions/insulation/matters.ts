import { matter } from "@good-grounds/core";

/** What is asked about insulation and the layers of cables, and the questions answered. */
export const INSULATING = Object.freeze({
  coverage: matter("insulation-coverage", "how much of the live part is covered with insulation"),
  removal: matter("insulation-removal", "what takes the insulation off"),
  origin: matter("insulation-origin", "where the insulation was put on"),
  siteMaterial: matter("site-insulation", "what the insulation put on at site consists of"),
  damage: matter("insulation-damage", "damage to the insulation"),
  conductorSeen: matter("conductor-seen", "bare live conductor can be seen"),
  crumbles: matter("insulation-crumbles", "the insulation cracks or falls off when the conductor is moved gently"),
  keepsTogether: matter("insulation-keeps-together", "the insulation holds when the conductor is moved gently"),
  noneBare: matter("no-bare-conductor", "no bare live conductor shows"),
  holds: matter("live-insulation", "live parts are insulated"),
  covered: matter("live-part-covered", "the live part is covered all over"),
  lasting: matter("insulation-lasting", "the insulation comes off only by destroying it"),
  fit: matter("insulation-fit", "the insulation is made for its purpose"),
  sound: matter("insulation-whole", "the insulation is sound where it was damaged"),
  construction: matter("cable-construction", "construction of the cable"),
  outermost: matter("outermost-layer", "outermost layer left over the length"),
  containment: matter("containment", "what the length without its sheath lies in"),
  containmentClosed: matter(
    "containment-closed",
    "it is closed to IP4X or IPXXD and opens only by a tool or on purpose",
  ),
  layersHold: matter("layers-left", "what is left of the cable protects"),
  basicLeft: matter("basic-insulation-left", "basic insulation is left on the live conductors"),
  mechanicalLeft: matter("mechanical-layer-left", "a mechanical layer is left"),
  enclosed: matter("length-enclosed", "the length lies in conduit, ducting, trunking or an enclosure"),
});
