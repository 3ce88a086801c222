import { all, any, held, is, NEVER, no, ranked, unsure, yes, yesNo } from "@good-grounds/core";
import { topic } from "../topic.ts";

/** Recessed luminaires, their lamps or drivers under or against thermal insulation or timber. */
export const downlightInsulation = topic({
  id: "downlight-insulation",
  title: "Recessed luminaire covered by insulation",
  group: "accessories",
  items: ["accessories.luminaires", "fire.hot-surfaces"],
  facts: {
    covered: yesNo({
      asks: "Is it, or its driver, covered by insulation or set closer to timber than its instructions allow?",
      effort: "opened",
      yes: "the luminaire or its driver is covered, or too close to what can burn",
      no: "the luminaire and its driver have the room they need",
      worse: "yes",
    }),
    scorch: yesNo({
      asks: "Are there brown or black marks on the joist, ceiling, insulation or cable?",
      effort: "opened",
      yes: "heat has marked what is round the luminaire",
      no: "heat has left no mark round the luminaire",
      worse: "yes",
    }),
    heat: ranked({
      asks: "How much heat does it give off?",
      effort: "glance",
      values: {
        "made-for-covering": "the luminaire is marked as suited to be covered",
        cool: "the lamp and driver give off little heat",
        hot: "the lamp is a halogen or filament lamp",
      },
    }),
  },
  contested: {
    "no-marks-yet": {
      question: "Does a covered hot lamp count as one step from fire while nothing is scorched?",
      positions: {
        improvement: {
          words: "while nothing is scorched it is a departure and no more",
          because: "the lamp has been lit there for years and what is round it has stayed cool enough",
        },
        "heat-builds-up": {
          words: "a hot lamp under insulation is one step from fire, marked or not",
          because: "more insulation or a larger lamp is all it takes, and nobody sees it happen",
        },
      },
    },
  },
  paths: [
    {
      id: "heat-builds-up",
      hazard: "burns-or-fire",
      route: "heat that cannot get away sets timber, insulation or cable alight",
      exists: any(yes("scorch"), all(yes("covered"), is("heat", "hot"))),
      layers: [
        {
          id: "cool-enough",
          provision: "thermal-protection",
          words: "a luminaire that stays cool enough where it is",
          gone: NEVER,
          // Years without a mark are what the milder view rests on.
          sound: all(no("scorch"), held("no-marks-yet", "improvement")),
          regulations: ["421.1.2", "559.4.1"],
        },
      ],
    },
  ],
  departures: [
    {
      when: all(yes("covered"), is("heat", "cool", "hot")),
      words: "the luminaire does not have the room that it needs",
      regulations: ["134.1.1", "559.4.1"],
    },
  ],
  client: {
    C2: "Some ceiling lights get too hot where they are. They could start a fire. Leave them off until they are changed.",
    C3: "Some ceiling lights are covered up above. They are not a danger now. They should have more room.",
    FI: [
      unsure("We could not see what lies on top of the ceiling lights. They may get too hot. This must be looked at.", [
        "covered",
        "heat",
      ]),
      unsure("We could not see if ceiling lights have got too hot. This must be looked at.", ["scorch"]),
    ],
    none: "The ceiling lights are safe where they are.",
  },
  remedies: [
    {
      words: "Clear the insulation back to the distance the maker gives and fit cool lamps.",
      changes: { covered: "no", scorch: "no", heat: "cool" },
    },
    {
      words: "Replace by luminaires made to be covered, and make good what is scorched.",
      changes: { scorch: "no", heat: "made-for-covering" },
    },
  ],
  examples: [
    {
      name: "covered, brown marks on the joist",
      facts: { covered: true, scorch: true },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: heat builds up",
    },
    {
      name: "covered halogen lamps, no mark",
      facts: { covered: true, scorch: false, heat: "hot" },
      possible: ["C3"],
      source: "trade discussion of luminaires against insulation",
    },
    {
      name: "covered halogen lamps, no mark, stricter view",
      facts: { covered: true, scorch: false, heat: "hot" },
      positions: { "no-marks-yet": "heat-builds-up" },
      possible: ["C2"],
      source: "trade discussion of luminaires against insulation",
    },
    {
      name: "made to be covered",
      facts: { covered: true, scorch: false, heat: "made-for-covering" },
      possible: ["none"],
      source: "regulation: maker's instructions followed",
    },
    {
      name: "void not looked into",
      facts: { heat: "hot" },
      possible: ["none", "C3", "C2"],
      missing: ["covered", "scorch"],
      source: "union over what the void would show",
    },
  ],
});
