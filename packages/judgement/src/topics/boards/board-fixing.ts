import { any, is, NEVER, not, ranked, says, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** How a board is held to the wall, and what closes its rear. */
export const boardFixing = topic({
  id: "board-fixing",
  title: "Fixing of a board",
  group: "boards",
  items: ["boards.fixing"],
  facts: {
    fixing: ranked({
      asks: "How is the board held?",
      effort: "glance",
      values: {
        firm: "the board is firm on the wall",
        slack: "the board moves when pushed, and still hangs by its screws",
        hanging: "the board hangs by its cables or lies loose",
      },
    }),
    strain: yesNo({
      asks: "Does its weight or movement pull at terminals or bend cables sharply?",
      effort: "opened",
      yes: "its weight or movement pulls at terminals or cables",
      no: "nothing pulls at terminals or cables",
      worse: "yes",
    }),
    rear: ranked({
      asks: "What closes its rear?",
      effort: "opened",
      values: {
        closed: "its rear is closed, or lies close on a wall that does not burn",
        "open-to-wood": "its rear is open towards wood, board or another thing that burns",
      },
    }),
  },
  contested: {},
  paths: [
    {
      id: "pulls-out",
      hazard: "burns-or-fire",
      route: "the board drops or shifts, a conductor is pulled from its terminal, and it arcs or bares live metal",
      exists: any(is("fixing", "hanging"), yes("strain")),
      layers: [
        oneEventAway("grip", "insulation", "terminals and insulation that still hold", ["526.1"]),
        {
          id: "fixing",
          provision: "surroundings",
          words: "a fixing that keeps weight off the conductors",
          gone: any(is("fixing", "hanging"), yes("strain")),
          sound: NEVER,
          regulations: ["134.1.1", "522.8.5", "526.6"],
        },
      ],
    },
  ],
  departures: [
    {
      when: not(is("fixing", "firm")),
      words: "the board is not firmly fixed",
      regulations: ["134.1.1"],
    },
    {
      when: is("rear", "open-to-wood"),
      words: "connections in the board are open towards what burns",
      regulations: ["526.5", "421.1"],
    },
  ],
  client: {
    C2: "The fuse box is loose or pulls at its wires. A wire could come out and spark. Fix it soon.",
    C3: [
      says(
        "The fuse box is not fixed as firmly as it should be. It is not a danger now. Have it made firm.",
        is("fixing", "slack"),
      ),
      says(
        "The back of the fuse box is open to wood or the like. It is not a danger now. Have it closed.",
        is("rear", "open-to-wood"),
      ),
    ],
    FI: unsure("We could not see if the fuse box is loose or pulls at its wires. This must be looked at soon.", [
      "fixing",
      "strain",
    ]),
    none: "The fuse box is fixed well.",
  },
  remedies: [
    { words: "Fix the board with screws and plugs that suit the wall.", changes: { fixing: "firm", strain: "no" } },
    { words: "Close the rear with a plate that does not burn.", changes: { rear: "closed" } },
  ],
  examples: [
    {
      name: "one screw left, moves, nothing strained",
      facts: { fixing: "slack", strain: false, rear: "closed" },
      possible: ["C3"],
      classification: "C3",
      source: "trade practice: insecure fixing",
    },
    {
      name: "hangs by its tails",
      facts: { fixing: "hanging", strain: true, rear: "closed" },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: strain on terminals likely",
    },
    {
      name: "open-backed on chipboard",
      facts: { fixing: "firm", strain: false, rear: "open-to-wood" },
      possible: ["C3"],
      source: "trade practice",
    },
    {
      name: "loose, not opened",
      facts: { fixing: "slack", rear: "closed" },
      possible: ["C3", "C2"],
      missing: ["strain"],
      source: "union over the strain",
    },
  ],
});
