import { all, any, held, is, NEVER, ranked, says, unsure } from "@good-grounds/core";
import { topic } from "../topic.ts";

/** Extension leads and adaptors that stand in for socket-outlets. */
export const adaptorsAsFixedWiring = topic({
  id: "adaptors-as-fixed-wiring",
  title: "Plugged-in leads and adaptors in place of sockets",
  group: "accessories",
  items: ["accessories.connections", "circuits.support"],
  facts: {
    use: ranked({
      asks: "How are the plugged-in leads or adaptors used? (A cord joined to the wiring without a plug is flexible-cord-as-fixed-wiring.)",
      effort: "glance",
      values: {
        "now-and-then": "a lead or adaptor is used now and then in plain view",
        lasting: "a lead or adaptor is left in place because sockets are too few",
        fixed: "a flexible lead is clipped, run through a wall, floor or ceiling, or under a carpet",
      },
    }),
    load: ranked({
      asks: "What is plugged into it?",
      effort: "glance",
      values: {
        light: "what is plugged in is well within its rating",
        chained: "one lead or adaptor is plugged into another, with light loads",
        heavy: "heaters, washing machines or the like load it to its rating or above",
      },
    }),
    condition: ranked({
      asks: "What is its state?",
      effort: "glance",
      values: {
        sound: "it is sound and cool",
        worn: "its sheath is crushed, worn or split, or it shows heat",
        bare: "live metal of it can be touched, such as a core or the pins of a second plug",
      },
    }),
  },
  contested: {
    "users-own": {
      question: "Is a user's own lead on a plug a matter for a report on the installation?",
      positions: {
        "shows-a-lack": {
          words: "a lead that is left in place shows that socket-outlets are lacking",
          because: "553.1.7 asks for outlets where equipment is likely to be used",
        },
        "not-installed": {
          words: "unless it is fixed it is noted and not classified",
          because: "what is plugged in is no part of the installation, and the user can take it away",
        },
      },
    },
  },
  paths: [
    {
      id: "lead-burns",
      hazard: "burns-or-fire",
      route: "the lead or adaptor overheats or is crushed, and what is near it burns",
      exists: all(
        any(is("load", "heavy"), is("condition", "worn", "bare")),
        any(is("use", "fixed"), is("condition", "bare"), held("users-own", "shows-a-lack")),
      ),
      layers: [
        {
          id: "lead",
          provision: "insulation",
          words: "the insulation and contacts of the lead",
          gone: is("condition", "bare"),
          sound: NEVER,
          regulations: ["416.1", "522.8.1", "433.1.1"],
        },
      ],
    },
  ],
  departures: [
    {
      when: all(
        any(is("use", "lasting", "fixed"), is("load", "chained", "heavy"), is("condition", "worn", "bare")),
        any(is("use", "fixed"), is("condition", "bare"), held("users-own", "shows-a-lack")),
      ),
      words: "leads or adaptors stand in for socket-outlets",
      regulations: ["553.1.7", "522.8.1"],
    },
  ],
  client: {
    C1: "Live metal of a lead or adaptor can be touched. Keep away. Turn the power off before it is taken out.",
    C2: "A lead or adaptor is worn or carries too much. It could start a fire. Stop using it and have more sockets put in.",
    C3: "Leads or adaptors stand in for sockets. It is not a danger now. More sockets are advised.",
    FI: unsure("We could not see all of a lead that runs out of sight. It must be looked at soon.", [
      "use",
      "load",
      "condition",
    ]),
    none: [
      says(
        "Leads and adaptors are used in a safe way.",
        all(is("use", "now-and-then"), is("load", "light"), is("condition", "sound")),
      ),
      "Leads and adaptors are no part of the wiring that we report on.",
    ],
  },
  remedies: [
    {
      words: "Take the lead out of use.",
      changes: { use: "now-and-then", load: "light", condition: "sound" },
    },
    {
      words: "Put in socket-outlets where they are needed.",
      changes: { use: "now-and-then", load: "light", condition: "sound" },
    },
  ],
  examples: [
    {
      name: "several adaptors behind a desk, light load",
      facts: { use: "lasting", load: "light", condition: "sound" },
      possible: ["C3"],
      classification: "C3",
      source: "trade practice: too few sockets",
    },
    {
      name: "flex clipped round the room to feed a heater",
      facts: { use: "fixed", load: "heavy", condition: "sound" },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: overload is to be expected",
    },
    {
      name: "three leads in a row to a heater behind a bed",
      facts: { use: "lasting", load: "heavy", condition: "sound" },
      possible: ["C2"],
      source: "trade practice: overload is to be expected",
    },
    {
      name: "the same where the user's own leads are held to be no part of the installation",
      facts: { use: "lasting", load: "heavy", condition: "sound" },
      positions: { "users-own": "not-installed" },
      possible: ["none"],
      source: "trade discussion of defects made by tenants",
    },
    {
      name: "lead crushed by a door",
      facts: { use: "fixed", load: "light", condition: "worn" },
      possible: ["C2"],
      source: "trade practice: damaged insulation",
    },
    {
      name: "bare core in reach",
      facts: { condition: "bare" },
      possible: ["C1"],
      source: "trade practice: bare live metal in reach",
    },
    {
      name: "runs under the carpet, state not seen",
      facts: { use: "fixed", load: "light" },
      possible: ["C3", "C2", "C1"],
      missing: ["condition"],
      source: "union over what lies under the carpet",
    },
  ],
});
