import { all, any, held, is, NEVER, ranked, says, unsure } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** Single cores in basic insulation only, outside an enclosure: sheath stripped too far, or never there. */
export const sheathMissing = topic({
  id: "sheath-missing",
  title: "Cores without sheath outside an enclosure",
  group: "cables",
  items: ["circuits.unsheathed", "boards.enclosure", "accessories.luminaires"],
  facts: {
    cores: ranked({
      asks: "Are cores without sheath to be seen outside an enclosure, conduit or trunking, and what are they like?",
      effort: "glance",
      values: {
        enclosed: "every core is inside a sheath or an enclosure",
        whole: "cores lie outside any enclosure with their basic insulation whole",
        nicked: "cores lie outside any enclosure with their insulation cut or worn, and no metal showing",
        "live-bare": "live metal of a core shows outside any enclosure",
      },
    }),
    place: ranked({
      asks: "Who or what gets to them?",
      effort: "glance",
      values: {
        closed: "they lie in a void that is reached only with a tool or by taking a fitting down",
        undisturbed: "they lie in the open where nobody is likely to touch or strike them",
        disturbed: "they lie in the open where people, storage, pets or weather get to them",
      },
    }),
    joint: ranked({
      asks: "Is there a joint in the bare length, and what is around it?",
      effort: "opened",
      values: {
        none: "no joint lies outside an enclosure",
        "open-clear": "a joint lies outside an enclosure, away from anything that burns",
        "open-combustible": "a joint lies outside an enclosure, against something that burns",
      },
    }),
  },
  contested: {
    "open-cores": {
      question:
        "Sound single cores in the open, in a spot where nothing is likely to disturb them: improvement or danger?",
      positions: {
        improve: {
          words: "a short sound length that nothing disturbs is to be improved",
          because: "the basic insulation holds, and no foreseeable event takes it away there",
        },
        "one-layer": {
          words: "basic insulation in the open is one layer, wherever it is",
          because: "521.10.1 wants an enclosure because basic insulation alone does not stand up to use",
        },
      },
    },
  },
  paths: [
    {
      id: "touch-core",
      hazard: "contact-with-live-parts",
      route: "the thin insulation is cut, pulled or worn and somebody touches the conductor",
      exists: is("cores", "whole", "nicked", "live-bare"),
      layers: [
        {
          id: "insulation",
          provision: "insulation",
          words: "the basic insulation of the cores",
          gone: is("cores", "live-bare"),
          sound: NEVER,
          regulations: ["416.1"],
        },
        {
          id: "shelter",
          provision: "barrier-or-enclosure",
          words: "the place they are in, which keeps hands and knocks away",
          gone: any(
            is("place", "disturbed"),
            all(is("place", "undisturbed"), any(is("cores", "nicked", "live-bare"), held("open-cores", "one-layer"))),
          ),
          sound: NEVER,
          regulations: ["521.10.1"],
        },
      ],
    },
    {
      id: "joint-fire",
      hazard: "burns-or-fire",
      route: "an open joint heats or sparks and sets fire to what it touches",
      exists: all(is("cores", "whole", "nicked", "live-bare"), is("joint", "open-clear", "open-combustible")),
      layers: [
        oneEventAway("connection", "thermal-protection", "a joint that stays tight", ["526.1"]),
        {
          id: "surroundings",
          provision: "surroundings",
          words: "surroundings that do not burn",
          gone: is("joint", "open-combustible"),
          sound: NEVER,
          regulations: ["526.5"],
        },
      ],
    },
  ],
  departures: [
    {
      when: is("cores", "whole", "nicked", "live-bare"),
      words: "cores without sheath are not enclosed",
      regulations: ["521.10.1", "526.8"],
    },
  ],
  client: {
    C1: "Bare live metal of a wire can be touched. It can kill. Keep away until it is covered.",
    C2: [
      says(
        "A wire with bare live metal lies in a closed space. Opening it could give a shock. It needs a proper cover soon.",
        is("cores", "live-bare"),
      ),
      says(
        "A joint of wires lies open against something that burns. It could start a fire. It needs a box soon.",
        is("joint", "open-combustible"),
      ),
      says(
        "Wires lie open with only a thin cover. If the cover is cut, somebody could get a shock. They need a proper cover soon.",
        is("cores", "whole", "nicked"),
      ),
    ],
    C3: "Some wires have only their thin cover. Nobody is likely to touch them. A full cover would be better.",
    FI: [
      unsure("We could not see how well some wires are covered. This must be looked at.", ["cores"]),
      unsure(
        "Some wires lack their full cover. We could not see all of them. This must be looked at.",
        ["place", "joint"],
        is("cores", "whole", "nicked", "live-bare"),
      ),
    ],
    none: "The wires are covered as they should be.",
  },
  remedies: [
    {
      words: "Draw the sheath into the enclosure, or fit an enclosure over cores and joint.",
      changes: { cores: "enclosed", joint: "none" },
    },
    {
      words: "Where cores are cut or bare, cut back and rejoin inside an enclosure.",
      changes: { cores: "enclosed", joint: "none" },
    },
  ],
  examples: [
    {
      name: "cores above a recessed luminaire, joint enclosed",
      facts: { cores: "whole", place: "closed", joint: "none" },
      possible: ["C3"],
      classification: "C3",
      source: "trade discussion: not accessible in use",
    },
    {
      name: "the same with the joint open on timber",
      facts: { cores: "whole", place: "closed", joint: "open-combustible" },
      possible: ["C2"],
      classification: "C2",
      source: "trade discussion: unenclosed joint against combustible material",
    },
    {
      name: "sheath ends short of a board in a cupboard for brooms",
      facts: { cores: "whole", place: "disturbed", joint: "none" },
      possible: ["C2"],
      source: "trade practice: basic insulation open to damage",
    },
    {
      name: "a short length high above a board",
      facts: { cores: "whole", place: "undisturbed", joint: "none" },
      possible: ["C3"],
      source: "trade discussion: high position, no likely damage",
    },
    {
      name: "the same held to be one layer",
      facts: { cores: "whole", place: "undisturbed", joint: "none" },
      positions: { "open-cores": "one-layer" },
      possible: ["C2"],
      source: "trade discussion of single cores in the open",
    },
    {
      name: "live copper showing beside a door",
      facts: { cores: "live-bare", place: "disturbed" },
      possible: ["C1"],
      classification: "C1",
      source: "trade practice: bare live metal in reach",
    },
    {
      name: "fitting not taken down",
      facts: { cores: "whole", place: "closed" },
      possible: ["C3", "C2"],
      missing: ["joint"],
      source: "union over how it is joined",
    },
  ],
});
