import { all, any, held, is, NEVER, no, oneKind, ranked, unsure, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** Socket-outlets up to 32 A without 30 mA RCD protection. */
export const socketsNoRcd = topic({
  id: "sockets-no-rcd",
  title: "Socket-outlets without 30 mA RCD",
  group: "residual-current",
  items: ["circuits.additional-protection", "outdoors.rcd"],
  facts: {
    "rcd-30ma": yesNo({
      asks: "Are the socket-outlets protected by an RCD of 30 mA or less that works?",
      effort: "glance",
      yes: "a working RCD of 30 mA or less protects them",
      no: "no working RCD of 30 mA or less protects them",
      worse: "no",
      worked: { by: "additional-protection", met: "yes", notMet: "no" },
    }),
    "outdoor-use": ranked({
      asks: "How likely is it that something used outdoors is plugged in here?",
      effort: "glance",
      values: {
        unlikely: "nothing used outdoors is likely to be plugged in here",
        possible: "something used outdoors could be plugged in here",
        likely: "it is the handy socket for something used outdoors",
      },
    }),
    "other-socket": yesNo({
      asks: "Is another socket with RCD provided for outdoor use, nearer and obvious?",
      effort: "glance",
      yes: "another socket with RCD is nearer and obvious for outdoor use",
      no: "no other socket with RCD is nearer or obvious",
      worse: "no",
    }),
    "used-by": oneKind({
      asks: "Who uses the sockets?",
      effort: "glance",
      values: { ordinary: "ordinary persons use them", "skilled-only": "only skilled or instructed persons use them" },
    }),
    "exception-recorded": yesNo({
      asks: "Is there a documented risk assessment (not for homes) or a label for one particular item that explains the omission?",
      effort: "glance",
      yes: "a recorded risk assessment or label covers the omission",
      no: "nothing recorded covers the omission",
      worse: "no",
    }),
  },
  contested: {
    expectation: {
      question: "When does possible outdoor use make the missing RCD potentially dangerous?",
      positions: {
        likely: {
          words: "when outdoor use is likely and no better socket is provided",
          because: "C2 wants a foreseeable event, and plugging in there has to be to be expected",
        },
        possible: {
          words: "whenever outdoor use is possible and no better socket is provided",
          because: "people use whatever socket is free, and a cut lead outdoors needs only one mistake",
        },
        never: {
          words: "never: the missing RCD is an improvement only",
          because: "basic and fault protection are as they were when it was built",
        },
      },
    },
  },
  paths: [
    {
      id: "cut-lead-outdoors",
      hazard: "contact-with-live-parts",
      route: "a lead used outdoors is cut or worn and somebody standing on the ground touches the core",
      exists: all(
        no("other-socket"),
        any(
          all(held("expectation", "likely"), is("outdoor-use", "likely")),
          all(held("expectation", "possible"), is("outdoor-use", "possible", "likely")),
        ),
      ),
      layers: [
        oneEventAway("lead", "insulation", "the insulation of the lead and the tool", ["416.1"]),
        {
          id: "rcd",
          provision: "additional-protection",
          words: "an RCD of 30 mA or less",
          gone: no("rcd-30ma"),
          sound: NEVER,
          regulations: ["411.3.3", "415.1.1"],
        },
      ],
    },
  ],
  departures: [
    {
      when: all(no("rcd-30ma"), no("exception-recorded"), is("used-by", "ordinary")),
      words: "socket-outlets have no RCD of 30 mA or less",
      regulations: ["411.3.3"],
    },
  ],
  client: {
    C2: "These sockets may be used for tools outside. No fast safety switch that works guards them. A cut lead could kill. Have one put in soon.",
    C3: "No fast safety switch that works guards these sockets. They are not a danger now. Adding one makes them safer.",
    FI: [
      unsure("We could not find out if these sockets have a fast safety switch. This must be looked at.", ["rcd-30ma"]),
      unsure(
        "No fast safety switch that works guards these sockets. We could not find out if they are used for things outside. This must be looked at.",
        ["outdoor-use", "other-socket"],
        no("rcd-30ma"),
      ),
    ],
    none: "These sockets are safe enough for how they are used.",
  },
  remedies: [
    {
      words: "Fit an RCD socket-outlet for outdoor use at the door, mark it, and leave the others as they are.",
      changes: { "other-socket": "yes" },
    },
    { words: "Protect the circuit by a 30 mA RCD or RCBO.", changes: { "rcd-30ma": "yes" } },
  ],
  examples: [
    {
      name: "ground floor beside the garden door",
      facts: {
        "rcd-30ma": false,
        "outdoor-use": "likely",
        "other-socket": false,
        "used-by": "ordinary",
        "exception-recorded": false,
      },
      possible: ["C2"],
      source: "trade discussion: sockets near an outside door",
    },
    {
      name: "another RCD socket provided",
      facts: {
        "rcd-30ma": false,
        "outdoor-use": "likely",
        "other-socket": true,
        "used-by": "ordinary",
        "exception-recorded": false,
      },
      possible: ["C3"],
      source: "trade discussion: sockets near an outside door",
    },
    {
      name: "upstairs bedroom",
      facts: {
        "rcd-30ma": false,
        "outdoor-use": "unlikely",
        "other-socket": false,
        "used-by": "ordinary",
        "exception-recorded": false,
      },
      possible: ["C3"],
      source: "guidance quoted in trade discussion: absent additional protection is an improvement",
    },
    {
      name: "only the absence is known",
      facts: { "rcd-30ma": false },
      possible: ["none", "C3", "C2"],
      missing: ["outdoor-use", "other-socket"],
      source: "union over what is not known",
    },
  ],
});
