import { ALWAYS, all, any, held, is, NEVER, not, ranked, says, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";
import { HOT_NOW, HOT_NOW_TOLD, heatAtIntake } from "./facts.ts";

/** Damage to what belongs to the distributor or the supplier: service cable, cut-out, meter. */
export const distributorEquipmentDamaged = topic({
  id: "distributor-equipment-damaged",
  title: "Cut-out, service cable or meter damaged",
  group: "intake",
  items: ["intake.cut-out", "intake.service-cable", "intake.meter"],
  facts: {
    "live-reachable": yesNo({
      asks: "Through the damage, does a finger reach live metal?",
      effort: "glance",
      yes: "a finger reaches live metal through the damage",
      no: "a finger does not reach live metal",
      worse: "yes",
    }),
    damage: ranked({
      asks: "How far does the damage go?",
      effort: "glance",
      values: {
        surface: "there is no damage, or only to the surface, and it is fixed",
        unfixed: "it is loose on the wall or hangs free, and case and sheath are whole",
        cracked: "the case is cracked, or the sheath is cut, and still covers what is live",
        open: "a part is missing or broken out, or cores of the service cable show",
      },
    }),
    heat: heatAtIntake({
      asks: "Are there signs of heat: scorching, smell, filling compound that has run out?",
      effort: "glance",
      none: "there are no signs of heat",
      marks: "there are signs of heat",
    }),
    reported: yesNo({
      asks: "Has the distributor or supplier been told, and a date for its visit been given?",
      effort: "glance",
      yes: "the owner of the equipment has been told and has given a date",
      no: "the owner of the equipment has not been told",
      worse: "no",
    }),
  },
  contested: {
    "not-the-clients": {
      question: "Is damage to equipment of the distributor or supplier classified, where nothing live can be touched?",
      positions: {
        classified: {
          words: "it is classified by its danger, whoever owns it",
          because: "those who live here are exposed to it, and the report is how they hear of it",
        },
        "reported-instead": {
          words: "once reported to its owner with a date given, it is noted and not classified",
          because: "the client may not touch it, and its owner has been told",
        },
      },
    },
  },
  paths: [
    {
      id: "touch",
      hazard: "contact-with-live-parts",
      route: "somebody touches live metal through the damage",
      exists: any(yes("live-reachable"), not(all(yes("reported"), held("not-the-clients", "reported-instead")))),
      layers: [
        {
          id: "case",
          provision: "barrier-or-enclosure",
          words: "the case of the equipment or the sheath of the cable",
          gone: yes("live-reachable"),
          sound: is("damage", "surface", "unfixed"),
          regulations: ["416.2.1"],
        },
      ],
    },
    {
      id: "heat-spreads",
      hazard: "burns-or-fire",
      route: "a bad joint goes on heating until something burns",
      exists: ALWAYS,
      layers: [
        {
          id: "no-heat",
          provision: "thermal-protection",
          words: "joints and terminals that stay cool",
          gone: is("heat", "marks", "now"),
          sound: NEVER,
          regulations: ["421.1.1"],
        },
        oneEventAway("case-holds", "barrier-or-enclosure", "the case, which keeps the heat from what is around it", [
          "421.1.1",
        ]),
      ],
    },
  ],
  departures: [
    {
      when: all(
        is("damage", "unfixed", "cracked", "open"),
        not(all(yes("reported"), held("not-the-clients", "reported-instead"))),
      ),
      words: "equipment at the origin is damaged or not held in place",
      regulations: ["132.12", "134.1.1", "416.2.1"],
    },
  ],
  dangers: [HOT_NOW],
  client: {
    C1: [
      HOT_NOW_TOLD,
      says(
        "Live metal can be touched where the power comes in. It can kill. Keep away. Call the power network now.",
        yes("live-reachable"),
      ),
    ],
    C2: [
      says(
        "The box or cable where the power comes in is damaged. It could give a shock or burn. Call the power network soon.",
        is("damage", "cracked", "open"),
      ),
      says(
        "There are signs of heat where the power comes in. It could start a fire. Call the power network soon.",
        is("heat", "marks"),
      ),
    ],
    C3: "The box or cable where the power comes in is loose. It is not a danger now. Ask the power network to fix it.",
    FI: [
      unsure("We could not see how bad the damage is where the power comes in. The power network must look at it.", [
        "damage",
        "live-reachable",
      ]),
      unsure("We could not find out if parts get hot where the power comes in. The power network must look at it.", [
        "heat",
      ]),
    ],
    none: [
      says("The box and cable where the power comes in are in order.", is("damage", "surface")),
      says("The owner of the damaged box or cable has been told and will put it right.", yes("reported")),
    ],
  },
  remedies: [
    {
      words: "Keep people away, call the distributor at once, and ask it to make safe and replace the part.",
      changes: { "live-reachable": "no", damage: "surface", heat: "none" },
    },
    {
      words: "Ask the distributor or supplier to replace the damaged part, and note the reference it gives.",
      changes: { damage: "surface", heat: "none" },
    },
  ],
  examples: [
    {
      name: "cut-out cracked, live parts reachable",
      facts: { "live-reachable": true, damage: "open", heat: "none" },
      possible: ["C1"],
      classification: "C1",
      source: "trade practice: live parts in reach",
    },
    {
      name: "cut-out cracked, nothing to be reached",
      facts: { "live-reachable": false, damage: "cracked", heat: "none", reported: false },
      possible: ["C2"],
      source: "trade discussion of damaged distributor's equipment",
    },
    {
      name: "the same, reported and held to be its owner's matter",
      facts: { "live-reachable": false, damage: "cracked", heat: "none", reported: true },
      positions: { "not-the-clients": "reported-instead" },
      possible: ["none"],
      source: "trade discussion: classify or notify",
    },
    {
      name: "cut-out that smokes, and is otherwise whole",
      facts: { "live-reachable": false, damage: "surface", heat: "now", reported: true },
      possible: ["C1"],
      classification: "C1",
      source: "trade practice: burning on the distributor's fuse",
    },
    {
      name: "scorched fuse carrier",
      facts: { "live-reachable": false, damage: "surface", heat: "marks" },
      possible: ["C2"],
      source: "trade practice: signs of heat at the origin",
    },
    {
      name: "lid broken, reach not tried",
      facts: { damage: "open", heat: "none" },
      possible: ["C2", "C1"],
      missing: ["live-reachable"],
      source: "union over what can be reached",
    },
    {
      name: "meter hangs from its tails, nothing open",
      facts: { "live-reachable": false, damage: "unfixed", heat: "none", reported: false },
      possible: ["C3"],
      source: "trade practice: insecure fixing",
    },
    {
      name: "paint and dust only",
      facts: { "live-reachable": false, damage: "surface", heat: "none" },
      possible: ["none"],
      source: "trade practice",
    },
  ],
});
