import { is, NEVER, no, not, ranked, unsure, yesNo } from "@good-grounds/core";
import { topic } from "../topic.ts";

/** Where cables enter a board: whether the entry is closed, and what its edge does to them. */
export const boardCableEntry = topic({
  id: "board-cable-entry",
  title: "Cable entries of a board",
  group: "boards",
  items: ["boards.connections", "boards.enclosure"],
  facts: {
    gap: ranked({
      asks: "Is the entry closed round the cables? (Where live metal can be touched through it, it is a gap in the board.)",
      effort: "glance",
      values: {
        closed: "the entry is closed round the cables",
        open: "the entry is open round the cables, and live metal is well out of line",
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
  },
  contested: {},
  paths: [
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
  ],
  departures: [
    {
      when: is("gap", "open"),
      words: "the entry does not keep the degree of protection of the enclosure",
      regulations: ["416.2.1"],
    },
    {
      when: not(is("edge", "guarded")),
      words: "the cable is not protected against the edge of the enclosure",
      regulations: ["522.8.1"],
    },
  ],
  client: {
    C1: "A wire is cut where it enters the fuse box. The box may be live. Keep away. It must be made safe today.",
    C2: "The place where wires enter the fuse box is not safe enough. It could give a shock. Fix it soon.",
    C3: "Where wires enter the fuse box, it could be closed or padded better. It is not a danger now.",
    FI: [
      unsure("We could not see well where wires enter the fuse box. It could be unsafe. It must be looked at soon.", [
        "edge",
      ]),
      unsure(
        "A sharp edge is at a wire of the fuse box. We could not find out if a fault would be cut off. It must be looked at soon.",
        ["case-fault-cleared"],
        is("edge", "sharp", "cut-in"),
      ),
    ],
    none: "The wires enter the fuse box as they should.",
  },
  remedies: [
    { words: "Close the entry with a gland, grommet or plate.", changes: { gap: "closed" } },
    { words: "Pad the edge, and replace what is cut.", changes: { edge: "guarded" } },
    {
      words: "Give the part ahead of the RCD double insulation, or disconnection by a delayed RCD ahead.",
      changes: { "case-fault-cleared": "yes" },
    },
  ],
  examples: [
    {
      name: "hole at the bottom, terminals well out of line",
      facts: { gap: "open", edge: "guarded" },
      possible: ["C3"],
      classification: "C3",
      source: "trade practice: gap small and live metal well out of line",
    },
    {
      name: "edge has cut into a line, TT, nothing ahead clears it",
      facts: { gap: "closed", edge: "cut-in", "case-fault-cleared": false },
      possible: ["C1"],
      source: "trade practice: nothing stands between the line and the case",
    },
    {
      name: "metal board on TT, tails on a bare edge before the RCD",
      facts: { gap: "closed", edge: "sharp", "case-fault-cleared": false },
      possible: ["C2"],
      source: "trade discussion: metal board on TT, tails without second insulation",
    },
    {
      name: "no grommet on TN",
      facts: { gap: "closed", edge: "sharp", "case-fault-cleared": true },
      possible: ["C3"],
      source: "trade practice",
    },
    {
      name: "edge not looked at",
      facts: { gap: "closed", "case-fault-cleared": true },
      possible: ["none", "C3", "C2"],
      missing: ["edge"],
      source: "union over the edge",
    },
  ],
});
