import { ALWAYS, all, any, held, is, NEVER, no, ranked, says, unsure, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** Old cable with rubber insulation, in lead, braid or a tough rubber sheath. */
export const rubberOrLeadCable = topic({
  id: "rubber-or-lead-cable",
  title: "Old rubber-insulated cable",
  group: "cables",
  items: ["circuits.insulation"],
  facts: {
    insulation: ranked({
      asks: "At the terminations opened, what happens to the insulation when it is moved a little?",
      effort: "opened",
      values: {
        supple: "the insulation is supple",
        hard: "the insulation is hard, and stays on and whole when moved a little",
        crumbles: "the insulation cracks or comes away at a touch",
        bare: "insulation has fallen off and live metal is bare",
      },
    }),
    enclosure: ranked({
      asks: "What is around the ends?",
      effort: "glance",
      values: {
        closed: "the ends are in closed boxes and accessories",
        "opened-by-users": "the ends are in boxes or fittings that users open to change a lamp or a shade",
        open: "the ends are in an open box or in the open",
      },
    }),
    "metal-sheath": ranked({
      asks: "If it has a lead or metal sheath: is the sheath continuous and earthed?",
      effort: "measured",
      values: {
        "not-metal": "the sheath is not of metal",
        earthed: "the metal sheath is continuous and earthed",
        unearthed: "the metal sheath is not earthed throughout",
      },
    }),
    "hot-ends": yesNo({
      asks: "Are the ends at lights and heaters, which run hottest, no worse than the rest?",
      effort: "opened",
      yes: "the ends at lights and heaters are no worse than the rest",
      no: "the ends at lights or heaters are worse than the rest and crumble",
      worse: "no",
    }),
  },
  contested: {
    age: {
      question: "Old rubber insulation that is hard yet whole: is that anything to report?",
      positions: {
        improve: {
          words: "it is near the end of its life and its replacement should be planned",
          because: "hard rubber does not survive the next change of an accessory",
        },
        nothing: {
          words: "age alone is nothing to classify; inspect sooner",
          because: "it insulates today, and an inspection records what may give rise to danger",
        },
        danger: {
          words: "hard rubber is a step from danger",
          because: "the next hand in the box breaks it",
        },
      },
    },
  },
  paths: [
    {
      id: "touch",
      hazard: "contact-with-live-parts",
      route: "somebody touches a conductor whose insulation is gone",
      exists: ALWAYS,
      layers: [
        {
          id: "insulation",
          provision: "insulation",
          words: "the insulation of the conductors",
          gone: any(
            is("insulation", "crumbles", "bare"),
            all(is("insulation", "hard"), held("age", "danger")),
            no("hot-ends"),
          ),
          sound: is("insulation", "supple"),
          regulations: ["416.1"],
        },
        {
          id: "box",
          provision: "barrier-or-enclosure",
          words: "a closed box that needs a tool",
          gone: any(
            all(is("insulation", "crumbles", "bare"), is("enclosure", "open")),
            all(is("insulation", "bare"), is("enclosure", "opened-by-users")),
          ),
          sound: NEVER,
          regulations: ["416.2.1", "416.2.4"],
        },
      ],
    },
    {
      id: "live-sheath",
      hazard: "shock-under-fault",
      route: "failing insulation makes the metal sheath live along its length",
      exists: is("metal-sheath", "earthed", "unearthed"),
      layers: [
        oneEventAway("insulation", "insulation", "what is left of the insulation", ["416.1"]),
        {
          id: "earth",
          provision: "fault-protection",
          words: "earthing of the metal sheath",
          gone: is("metal-sheath", "unearthed"),
          sound: NEVER,
          regulations: ["411.3.1.1"],
        },
      ],
    },
  ],
  departures: [
    {
      when: any(all(is("insulation", "hard"), held("age", "improve")), is("insulation", "crumbles", "bare")),
      words: "the insulation is worn out with age",
      regulations: ["134.1.1", "651.2"],
    },
    {
      when: is("metal-sheath", "unearthed"),
      words: "a metal sheath is not earthed",
      regulations: ["411.3.1.1"],
    },
  ],
  client: {
    C1: [
      says(
        "Old cable has lost its cover and live metal can be touched. It can kill. Keep away until it is replaced.",
        is("insulation", "bare"),
      ),
      says(
        "The cover of old cable comes off at a touch, and it lies open. It can kill. Keep away until it is replaced.",
        is("insulation", "crumbles"),
      ),
    ],
    C2: [
      says(
        "The rubber on old cables is falling apart. It could give a shock or start a fire. Have these cables replaced soon.",
        is("insulation", "crumbles", "bare"),
      ),
      says(
        "The rubber on old cables is falling apart at lights or heaters. It could give a shock or start a fire. Have it replaced soon.",
        no("hot-ends"),
      ),
      says(
        "The metal cover of an old cable is not earthed. If its rubber fails, it could give a shock. Have this put right soon.",
        is("metal-sheath", "unearthed"),
      ),
      says(
        "The rubber on old cables is hard with age. It could fail and give a shock. Have these cables replaced soon.",
        is("insulation", "hard"),
      ),
    ],
    C3: "Some cables are old and their rubber is hard. They work for now. Plan to replace them.",
    FI: unsure(
      "Some cables are very old. We could not see enough of them to know if they are safe. They must be looked at soon.",
      ["insulation", "enclosure", "metal-sheath", "hot-ends"],
    ),
    none: "The old cables are still good. Have them looked at again in good time.",
  },
  remedies: [
    { words: "Close every open box, with the circuit isolated.", changes: { enclosure: "closed" } },
    {
      words: "Rewire the circuits concerned; leave no old ends in use.",
      changes: { insulation: "supple", "hot-ends": "yes", "metal-sheath": "not-metal" },
    },
  ],
  examples: [
    {
      name: "insulation fallen off in an open box",
      facts: { insulation: "bare", enclosure: "open" },
      possible: ["C1"],
      classification: "C1",
      source: "trade practice: bare live parts in reach",
    },
    {
      name: "crumbles on handling, boxes closed",
      facts: {
        insulation: "crumbles",
        enclosure: "closed",
        "metal-sheath": "not-metal",
        "hot-ends": true,
      },
      possible: ["C2"],
      classification: "C2",
      source: "trade discussion: crumbles by handling",
    },
    {
      name: "supple, good reading, age alone",
      facts: {
        insulation: "supple",
        enclosure: "closed",
        "metal-sheath": "not-metal",
        "hot-ends": true,
      },
      possible: ["none"],
      classification: "none",
      source: "trade discussion: age alone is nothing",
    },
    {
      name: "hard and whole",
      facts: { insulation: "hard", enclosure: "closed", "metal-sheath": "not-metal", "hot-ends": true },
      possible: ["C3"],
      source: "trade discussion of old cable",
    },
    {
      name: "hard and whole, age held to be nothing",
      facts: { insulation: "hard", enclosure: "closed", "metal-sheath": "not-metal", "hot-ends": true },
      positions: { age: "nothing" },
      possible: ["none"],
      source: "trade discussion of old cable",
    },
    {
      name: "lead sheath without earth",
      facts: { insulation: "hard", enclosure: "closed", "metal-sheath": "unearthed", "hot-ends": true },
      possible: ["C2"],
      source: "trade practice: exposed metal without fault protection",
    },
    {
      name: "ends at the lights not opened",
      facts: {
        insulation: "hard",
        enclosure: "closed",
        "metal-sheath": "not-metal",
        "hot-ends": { notKnown: "limited", reason: "ceiling fittings not taken down" },
      },
      possible: ["C3", "C2"],
      classification: "FI",
      source: "union over the ends not seen",
    },
    {
      name: "no end opened yet",
      facts: { enclosure: "closed", "metal-sheath": "not-metal", "hot-ends": true },
      possible: ["none", "C3", "C2"],
      missing: ["insulation"],
      source: "union over the state of the ends",
    },
  ],
});
