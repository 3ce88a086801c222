/** Words of the drawing of the layers between live metal and a person. */
export const LAYERS = Object.freeze({
  /** What all layers come to. */
  standing: Object.freeze({
    holds: "Holds",
    "one-event": "Until one event",
    gone: "Nothing left",
    "not-known": "Not known",
  }),
  /** How one layer stands. */
  word: Object.freeze({ holds: "holds", "one-event": "one event", gone: "gone", "not-known": "not known" }),
  title: (standing: string) => `Layers between live metal and a person: ${standing}`,
  outwards: (layers: string, because: string) => {
    const all = layers === "" ? "No layer is known." : `From the live part outwards: ${layers}.`;
    return because === "" ? all : `${all} They come to one: ${because}.`;
  },
  caption:
    "Layers between the live part, solid, and a person, not to scale. Double line: holds. Single: holds until one event. Broken, with a gap: gone. Dotted: not known.",
});
