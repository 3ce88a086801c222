import { is, NEVER, no, not, ranked, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** Where cables enter a board: the hole, its edge, and how far the sheath goes. */
export const boardCableEntry = topic({
  id: "board-cable-entry",
  title: "Cable entries of a board",
  group: "boards",
  items: ["boards.connections", "boards.enclosure", "circuits.unsheathed"],
  facts: {
    hole: ranked({
      asks: "How open is the entry?",
      effort: "glance",
      values: {
        closed: "the entry is closed round the cables",
        "out-of-line": "the entry lets a 12.5 mm ball in, and live metal is well out of line",
        "in-line": "the entry lets a 12.5 mm ball in, and live metal lies in line with it",
        "finger-reaches": "the jointed test finger touches live metal through the entry",
      },
    }),
    edge: ranked({
      asks: "What does the cable rest on where it enters?",
      effort: "opened",
      values: {
        guarded: "the cable passes a gland, a grommet or a smooth edge",
        sharp: "the cable lies on a sharp metal edge, and its sheath is whole",
        "cut-in": "the edge has cut into the insulation of a live conductor",
      },
    }),
    "case-fault-cleared": yesNo({
      asks: "If a line touches the case, is it insulating, or does a device ahead disconnect in time?",
      effort: "measured",
      yes: "the case is insulating, or a line touching it is disconnected in time",
      no: "the case is metal, and a line touching it is not disconnected in time",
      worse: "no",
    }),
    sheath: ranked({
      asks: "Where does the sheath end?",
      effort: "glance",
      values: {
        inside: "the sheath ends inside the board",
        "out-of-the-way":
          "cores without sheath show outside the board, where nothing is likely to catch or strain them",
        "in-the-way": "cores without sheath show outside the board, where they can be caught, strained or handled",
      },
    }),
  },
  contested: {},
  paths: [
    {
      id: "reach-in",
      hazard: "contact-with-live-parts",
      route: "somebody touches live metal through the open entry",
      exists: not(is("hole", "closed")),
      layers: [
        {
          id: "entry",
          provision: "barrier-or-enclosure",
          words: "the enclosure at the entry",
          gone: is("hole", "finger-reaches"),
          sound: is("hole", "closed", "out-of-line"),
          regulations: ["416.2.1"],
        },
      ],
    },
    {
      id: "cut-cable",
      hazard: "shock-under-fault",
      route: "the edge cuts through to a conductor, the case becomes live and somebody touches it",
      exists: not(is("edge", "guarded")),
      layers: [
        {
          id: "insulation",
          provision: "insulation",
          words: "the insulation of the cable",
          gone: is("edge", "cut-in"),
          sound: NEVER,
          regulations: ["522.8.1", "416.1"],
        },
        {
          id: "disconnection",
          provision: "fault-protection",
          words: "a case that is insulating or disconnected in time",
          gone: no("case-fault-cleared"),
          sound: NEVER,
          regulations: ["411.3.2"],
        },
      ],
    },
    {
      id: "core-handled",
      hazard: "contact-with-live-parts",
      route: "a core without sheath is damaged, and somebody touches its metal",
      exists: is("sheath", "in-the-way"),
      layers: [
        oneEventAway("basic", "insulation", "the insulation of the core", ["416.1"]),
        {
          id: "sheath",
          provision: "barrier-or-enclosure",
          words: "a sheath or enclosure over the core",
          gone: is("sheath", "in-the-way"),
          sound: NEVER,
          regulations: ["521.10.1", "526.8"],
        },
      ],
    },
  ],
  departures: [
    {
      when: not(is("hole", "closed")),
      words: "the entry does not keep the degree of protection of the enclosure",
      regulations: ["416.2.1"],
    },
    {
      when: not(is("edge", "guarded")),
      words: "the cable is not protected against the edge of the enclosure",
      regulations: ["522.8.1"],
    },
    {
      when: not(is("sheath", "inside")),
      words: "cores without sheath are not within an enclosure",
      regulations: ["521.10.1", "526.8"],
    },
  ],
  client: {
    C1: "Live metal can be touched where wires enter the fuse box. Keep away. It must be made safe today.",
    C2: "The place where wires enter the fuse box is not safe enough. It could give a shock. Fix it soon.",
    C3: "Where wires enter the fuse box, it could be closed or padded better. It is safe for now.",
    FI: "We could not see well where wires enter the fuse box. It could be unsafe. It must be looked at soon.",
    none: "The wires enter the fuse box as they should.",
  },
  remedies: [
    { words: "Close the entry with a gland, grommet or plate.", changes: { hole: "closed" } },
    { words: "Pad the edge, and replace what is cut.", changes: { edge: "guarded" } },
    { words: "Bring the sheath into the board, or enclose the cores.", changes: { sheath: "inside" } },
    {
      words: "Give the part ahead of the RCD double insulation, or disconnection by a delayed RCD ahead.",
      changes: { "case-fault-cleared": "yes" },
    },
  ],
  examples: [
    {
      name: "hole at the bottom, terminals well out of line",
      facts: { hole: "out-of-line", edge: "guarded", sheath: "inside" },
      possible: ["C3"],
      classification: "C3",
      source: "trade practice: gap small and live metal well out of line",
    },
    {
      name: "large hole, finger on a terminal",
      facts: { hole: "finger-reaches", edge: "guarded", sheath: "inside" },
      possible: ["C1"],
      classification: "C1",
      source: "trade practice: nothing stands between a finger and live metal",
    },
    {
      name: "metal board on TT, tails on a bare edge before the RCD",
      facts: { hole: "closed", edge: "sharp", "case-fault-cleared": false, sheath: "inside" },
      possible: ["C2"],
      source: "trade discussion: metal board on TT, tails without second insulation",
    },
    {
      name: "no grommet on TN",
      facts: { hole: "closed", edge: "sharp", "case-fault-cleared": true, sheath: "inside" },
      possible: ["C3"],
      source: "trade practice",
    },
    {
      name: "stripped cores 50 mm outside, behind the meter door",
      facts: { hole: "closed", edge: "guarded", sheath: "out-of-the-way" },
      possible: ["C3"],
      source: "trade discussion: cores without sheath outside an enclosure",
    },
    {
      name: "edge not looked at",
      facts: { hole: "closed", "case-fault-cleared": true, sheath: "inside" },
      possible: ["none", "C3", "C2"],
      missing: ["edge"],
      source: "union over the edge",
    },
  ],
});
