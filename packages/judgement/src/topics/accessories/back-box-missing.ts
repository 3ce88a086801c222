import { any, is, NEVER, ranked, says, unsure, yes, yesNo } from "@good-grounds/core";
import { topic } from "../topic.ts";

/** Terminals of an accessory or luminaire that no box closes in at the back. */
export const backBoxMissing = topic({
  id: "back-box-missing",
  title: "No box behind an accessory",
  group: "accessories",
  items: ["accessories.connections", "circuits.unsheathed", "accessories.luminaires"],
  facts: {
    behind: ranked({
      asks: "What closes the terminals in at the back?",
      effort: "opened",
      values: {
        box: "a box or the building behind it closes the terminals in, and does not burn",
        "open-cavity": "the terminals are open to a cavity with nothing near that burns",
        combustible: "the terminals are open to timber, wallpaper, insulation or the like",
      },
    }),
    heat: yesNo({
      asks: "Is there any mark of heat behind it?",
      effort: "opened",
      yes: "there are marks of heat behind it",
      no: "there is no mark of heat behind it",
      worse: "yes",
    }),
  },
  contested: {},
  paths: [
    {
      id: "terminal-ignites",
      hazard: "burns-or-fire",
      route: "a terminal that works loose sets what is behind it alight",
      exists: any(is("behind", "combustible"), yes("heat")),
      layers: [
        {
          id: "tight-terminals",
          provision: "thermal-protection",
          words: "terminals that are tight and cool for now",
          gone: NEVER,
          sound: NEVER,
          regulations: ["526.5", "421.1.1"],
        },
      ],
    },
  ],
  departures: [
    {
      when: is("behind", "open-cavity", "combustible"),
      words: "terminals are not closed in",
      regulations: ["526.5", "134.1.1"],
    },
  ],
  client: {
    C2: [
      says(
        "A socket, switch or light has no box behind it. If a wire gets hot, the wall could burn. Have a box fitted soon.",
        is("behind", "combustible"),
      ),
      says(
        "There are marks of heat behind a socket, switch or light. It could start a fire. Have it put right soon.",
        yes("heat"),
      ),
    ],
    C3: "A socket, switch or light has no box behind it. It is not a danger now. A box should be fitted.",
    FI: unsure("We could not see what is behind a socket, switch or light. This must be looked at soon.", [
      "behind",
      "heat",
    ]),
    none: "The sockets, switches and lights are closed in at the back.",
  },
  remedies: [{ words: "Fit a box.", changes: { behind: "box", heat: "no" } }],
  examples: [
    {
      name: "wall light screwed to wallpapered board, connectors open behind",
      facts: { behind: "combustible" },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: open terminals against what burns",
    },
    {
      name: "switch plate over a brick cavity",
      facts: { behind: "open-cavity", heat: false },
      possible: ["C3"],
      classification: "C3",
      source: "trade practice: departure without a route",
    },
    {
      name: "not taken off the wall",
      facts: { heat: false },
      possible: ["none", "C3", "C2"],
      missing: ["behind"],
      source: "union over what lies behind",
    },
  ],
});
