import { all, any, held, is, no, not, ranked, says, unsure, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** An overcurrent device rated above what the cable can carry as installed. */
export const overloadDeviceOversize = topic({
  id: "overload-device-oversize",
  title: "Overcurrent device too large for the cable",
  group: "circuits",
  items: ["circuits.capacity", "circuits.protection", "boards.devices"],
  facts: {
    "within-cable": yesNo({
      asks: "Is the rated current of the device (or its wire) at most the capacity of the cable as installed?",
      effort: "opened",
      yes: "the device is within the capacity of the cable as installed",
      no: "the device is rated above the capacity of the cable as installed",
      worse: "no",
      worked: { by: "cable-capacity", matter: "device-within-cable", met: "yes", notMet: "no" },
    }),
    excess: ranked({
      asks: "By how much is it over?",
      effort: "opened",
      values: {
        slight: "it is over by no more than a tenth",
        large: "it is over by more than a tenth",
      },
    }),
    load: ranked({
      asks: "What can the load draw?",
      effort: "glance",
      values: {
        "cannot-overload": "one fixed load is fed, which cannot draw more than the cable carries",
        "stays-under": "what is fed today stays under the capacity of the cable",
        "can-exceed": "the load can exceed the capacity of the cable, by sockets, added points or a large appliance",
      },
    }),
    heat: ranked({
      asks: "Is there any sign of heat in the cable or at its ends?",
      effort: "opened",
      values: {
        none: "no sign of heat was found",
        marks: "browned or hardened insulation shows earlier heat",
      },
    }),
  },
  contested: {
    "slight-excess": {
      question: "Is a device slightly above the capacity of the cable, without any sign of heat, a danger?",
      positions: {
        improve: {
          words: "an excess within a tenth and no heat is to be improved",
          because: "tabulated capacities are for full load without end at the highest ambient temperature",
        },
        danger: {
          words: "any excess leaves the cable without overload protection",
          because: "433.1.1 knows no tolerance",
        },
      },
    },
    "load-today": {
      question: "Does a load that stays under the cable's capacity today stand in for the right device?",
      positions: {
        "does-not-count": {
          words: "today's load is no protection against overload",
          because: "loads change, and only the device is there when they do",
        },
        counts: {
          words: "a load that stays well under leaves two events before any harm",
          because: "the load would have to grow, and nobody to notice the heat",
        },
      },
    },
  },
  paths: [
    {
      id: "overload",
      hazard: "burns-or-fire",
      route: "the cable carries more than it can for hours, and its insulation fails or burns",
      exists: any(no("within-cable"), is("heat", "marks")),
      layers: [
        {
          id: "device",
          provision: "overcurrent-protection",
          words: "a device that opens before the cable overheats, or a load that cannot overload it",
          gone: any(
            is("heat", "marks"),
            all(
              no("within-cable"),
              is("load", "stays-under", "can-exceed"),
              not(all(is("excess", "slight"), held("slight-excess", "improve"))),
              not(all(is("load", "stays-under"), held("load-today", "counts"))),
            ),
          ),
          sound: all(is("heat", "none"), is("load", "cannot-overload")),
          regulations: ["433.1.1", "433.3.1"],
        },
        oneEventAway("cool", "thermal-protection", "a cable that has stayed cool so far"),
      ],
    },
  ],
  departures: [
    {
      when: all(no("within-cable"), is("load", "stays-under", "can-exceed")),
      words: "the device does not protect the cable against overload",
      regulations: ["433.1.1"],
    },
  ],
  client: {
    C2: [
      says(
        "A fuse is too big for its cable. The cable could get too hot and start a fire. Have the right fuse fitted soon.",
        no("within-cable"),
      ),
      says("A cable has been too hot. It could start a fire. Have the cause put right soon.", is("heat", "marks")),
    ],
    C3: "A fuse is too big for its cable. It is not a danger now. Fit the right size when you can.",
    FI: [
      unsure(
        "We could not find out if a cable is thick enough for its fuse. It could get too hot. This must be looked at.",
        ["within-cable"],
      ),
      unsure("We could not see if a cable has been too hot. This must be looked at.", ["heat"]),
      unsure(
        "A fuse is bigger than its cable can take. We could not find out how much the cable carries. This must be looked at.",
        ["load", "excess"],
        no("within-cable"),
      ),
    ],
    none: "The fuse suits the cable and what it feeds.",
  },
  remedies: [
    {
      words: "Fit a device or fuse wire that the cable can carry, where the load allows it.",
      changes: { "within-cable": "yes", heat: "none" },
    },
    {
      words: "Better the way the cable is installed: out of insulation, out of the bunch.",
      changes: { "within-cable": "yes", heat: "none" },
    },
    { words: "Replace the cable by a larger one.", changes: { "within-cable": "yes", heat: "none" } },
  ],
  examples: [
    {
      name: "30 A wire in a 15 A carrier, cable of 20 A",
      facts: { "within-cable": false, excess: "large", load: "can-exceed", heat: "none" },
      possible: ["C2"],
      classification: "C2",
      source: "arithmetic: 30 A is half as much again as 20 A; regulation 433.1.1",
    },
    {
      name: "fixed 6 kW heater, 32 A device, cable of 27 A",
      facts: { "within-cable": false, excess: "large", load: "cannot-overload", heat: "none" },
      possible: ["none"],
      classification: "none",
      source: "arithmetic: 6000 ÷ 230 = 26.1 A; regulation 433.3.1",
    },
    {
      name: "shower cable of 38 A under insulation on 40 A",
      facts: { "within-cable": false, excess: "slight", load: "stays-under", heat: "none" },
      possible: ["C3"],
      source: "trade discussion: 40 ÷ 38 = 1.05, no heat",
    },
    {
      name: "the same held to be a danger",
      facts: { "within-cable": false, excess: "slight", load: "stays-under", heat: "none" },
      positions: { "slight-excess": "danger" },
      possible: ["C2"],
      source: "trade discussion of showers on 40 A and 45 A",
    },
    {
      name: "32 A on 1.5 mm² that feeds two lamps, today's load held to count",
      facts: { "within-cable": false, excess: "large", load: "stays-under", heat: "none" },
      positions: { "load-today": "counts" },
      possible: ["C3"],
      source: "trade discussion of lightly loaded circuits",
    },
    {
      name: "browned insulation at the device",
      facts: { "within-cable": false, excess: "slight", load: "can-exceed", heat: "marks" },
      possible: ["C2"],
      source: "trade practice: heat has shown itself",
    },
    {
      name: "way of installing not seen",
      facts: {
        excess: "large",
        load: "can-exceed",
        heat: "none",
        "within-cable": { notKnown: "limited", reason: "route not accessible" },
      },
      possible: ["none", "C2"],
      classification: "FI",
      source: "union over the capacity as installed",
    },
    {
      name: "load not asked",
      facts: { "within-cable": false, excess: "large", heat: "none" },
      possible: ["none", "C2"],
      missing: ["load"],
      source: "union over the load",
    },
  ],
});
