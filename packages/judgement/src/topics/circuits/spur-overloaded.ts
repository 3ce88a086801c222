import { all, any, held, is, NEVER, no, ranked, says, unsure, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** A spur of a ring or radial final circuit that feeds more than its cable can carry without a fuse. */
export const spurOverloaded = topic({
  id: "spur-overloaded",
  title: "Spur that feeds too much",
  group: "circuits",
  items: ["circuits.capacity", "circuits.protection"],
  facts: {
    outlets: ranked({
      asks: "What does the spur feed?",
      effort: "measured",
      values: {
        one: "it feeds one single or twin socket-outlet, or one fixed appliance",
        several: "it feeds several outlets, or a spur leads off the spur",
      },
    }),
    fused: yesNo({
      asks: "Does a fused connection unit, 13 A at most, stand at its start?",
      effort: "opened",
      yes: "a fuse of at most 13 A stands at the start of the spur",
      no: "no fuse stands at the start of the spur",
      worse: "no",
    }),
    "cable-carries": yesNo({
      asks: "Can the cable of the spur carry the rated current of the circuit's own device as installed?",
      effort: "opened",
      yes: "the cable of the spur carries the rated current of the circuit's device",
      no: "the cable of the spur carries less than the circuit's device lets through",
      worse: "no",
      worked: { by: "cable-capacity", matter: "device-within-cable", met: "yes", notMet: "no", findings: "none" },
    }),
    load: ranked({
      asks: "What is likely to be plugged in there at the same time?",
      effort: "glance",
      values: {
        light: "only light loads are likely: lamps, chargers, a television",
        heavy: "heavy loads are likely: kitchen, laundry, heaters, workshop",
      },
    }),
    heat: ranked({
      asks: "Is there any sign of heat at the sockets or in the cable?",
      effort: "opened",
      values: {
        none: "no sign of heat was found",
        marks: "browning or softening shows earlier heat",
      },
    }),
  },
  contested: {
    "unfused-spur": {
      question: "Several outlets on an unfused spur: when is that a danger?",
      positions: {
        "by-load": {
          words: "it is a danger where heavy loads are likely, else to be improved",
          because: "433.1.204 asks that a long overload be unlikely",
        },
        always: {
          words: "it is a danger whatever is plugged in today",
          because: "users plug in what they like, and the device lets it pass",
        },
        improve: {
          words: "without a sign of heat it is to be improved",
          because: "cables clipped or in plaster have capacity to spare",
        },
      },
    },
  },
  paths: [
    {
      id: "overload",
      hazard: "burns-or-fire",
      route: "appliances together load the spur beyond its cable for a long time",
      exists: any(all(is("outlets", "several"), no("fused"), no("cable-carries")), is("heat", "marks")),
      layers: [
        {
          id: "protection",
          provision: "overcurrent-protection",
          words: "a device or fuse that opens before the spur overheats, or a load that stays small",
          gone: any(
            is("heat", "marks"),
            all(
              is("outlets", "several"),
              no("fused"),
              no("cable-carries"),
              any(held("unfused-spur", "always"), all(held("unfused-spur", "by-load"), is("load", "heavy"))),
            ),
          ),
          sound: NEVER,
          regulations: ["433.1.1", "433.1.204"],
        },
        oneEventAway("cool", "thermal-protection", "a cable that has stayed cool so far"),
      ],
    },
  ],
  departures: [
    {
      when: all(is("outlets", "several"), no("fused"), no("cable-carries")),
      words: "a spur is not protected against overload",
      regulations: ["433.1.1", "433.1.204"],
    },
  ],
  client: {
    C2: [
      says(
        "Too many sockets hang on one thin cable. It could get too hot and start a fire. Have it changed soon.",
        all(is("outlets", "several"), no("fused"), no("cable-carries")),
      ),
      says(
        "The cable to some sockets has been too hot. It could start a fire. Have it put right soon.",
        is("heat", "marks"),
      ),
    ],
    C3: "Several sockets hang on one thin cable. It is not a danger now. Adding a fuse would make it safer.",
    FI: [
      unsure("We could not find out how some sockets are fed. Their cable could get too hot. This must be looked at.", [
        "outlets",
        "fused",
        "cable-carries",
      ]),
      unsure(
        "Several sockets hang on one thin cable. We could not find out how much it carries. This must be looked at.",
        ["load"],
        all(is("outlets", "several"), no("fused"), no("cable-carries")),
      ),
      unsure("We could not see if the cable to some sockets has been too hot. This must be looked at.", ["heat"]),
    ],
    none: "The sockets are fed as they should be.",
  },
  remedies: [
    {
      words: "Fit a fused connection unit with 13 A at the start of the spur.",
      changes: { fused: "yes", heat: "none" },
    },
    { words: "Take the extra outlets into the ring.", changes: { outlets: "one", heat: "none" } },
    {
      words: "Change the circuit's device to one that the cable of the spur can carry.",
      changes: { "cable-carries": "yes", heat: "none" },
    },
  ],
  examples: [
    {
      name: "spur off a spur in a kitchen, 2.5 mm² enclosed on 32 A",
      facts: { outlets: "several", fused: false, "cable-carries": false, load: "heavy", heat: "none" },
      possible: ["C2"],
      classification: "C2",
      source: "trade discussion of spurs; regulation 433.1.204",
    },
    {
      name: "two bedroom twins on one spur",
      facts: { outlets: "several", fused: false, "cable-carries": false, load: "light", heat: "none" },
      possible: ["C3"],
      classification: "C3",
      source: "trade discussion of spurs",
    },
    {
      name: "the same held to be a danger always",
      facts: { outlets: "several", fused: false, "cable-carries": false, load: "light", heat: "none" },
      positions: { "unfused-spur": "always" },
      possible: ["C2"],
      source: "trade discussion of spurs",
    },
    {
      name: "kitchen spur held to be an improvement",
      facts: { outlets: "several", fused: false, "cable-carries": false, load: "heavy", heat: "none" },
      positions: { "unfused-spur": "improve" },
      possible: ["C3"],
      source: "trade discussion of spurs",
    },
    {
      name: "several outlets behind a 13 A fuse",
      facts: { outlets: "several", fused: true, heat: "none" },
      possible: ["none"],
      source: "regulation 433.1.204",
    },
    {
      name: "4 mm² clipped direct",
      facts: { outlets: "several", fused: false, "cable-carries": true, heat: "none" },
      possible: ["none"],
      source: "arithmetic: a cable of 37 A on a 32 A device",
    },
    {
      name: "not found out what the spur feeds",
      facts: {
        fused: false,
        "cable-carries": false,
        load: "heavy",
        heat: "none",
        outlets: { notKnown: "limited", reason: "behind fitted units" },
      },
      possible: ["none", "C2"],
      classification: "FI",
      source: "union over what the spur feeds",
    },
    {
      name: "start of the spur not opened",
      facts: { outlets: "several", "cable-carries": false, load: "heavy", heat: "none" },
      possible: ["none", "C2"],
      missing: ["fused"],
      source: "union over the fuse",
    },
  ],
});
