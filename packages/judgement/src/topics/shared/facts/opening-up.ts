import { ranked, yesNo } from "@good-grounds/core";

/** How what stands around a live part comes open. */
export const OPENING_UP_FACTS = Object.freeze({
  opens: ranked({
    asks: "What does it take to open or remove what is around it?",
    effort: "glance",
    values: {
      destruction: "it does not open without being destroyed",
      tool: "a tool opens it",
      // Before the key: who holds one does not matter where everything is dead first.
      interlock: "it opens only when an interlock has made everything behind it dead",
      key: "a key opens it",
      hand: "a hand opens it",
      "stands-open": "it stands open in use",
    },
    // Met may come from a barrier behind or from an accessory left out, which are asked by themselves.
    worked: { by: "enclosure-opening", notMet: "hand" },
  }),
  "lock-works": yesNo({
    asks: "Does its lock or interlock work, and is it kept locked?",
    effort: "glance",
    yes: "its lock or interlock works and is kept locked",
    no: "its lock or interlock is broken, or is left unlocked",
    worse: "no",
  }),
  "barrier-behind": yesNo({
    asks: "With it open, does a further barrier that takes a tool or key keep a finger off all live metal?",
    effort: "opened",
    yes: "a further barrier behind it, which takes a tool or key, keeps fingers off live metal",
    no: "no further barrier behind it keeps fingers off live metal",
    worse: "no",
  }),
});
