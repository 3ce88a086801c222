import { ranked, yesNo } from "@good-grounds/core";

/** Whether what stands around a live part is whole and firmly held. */
export const FIXING_FACTS = Object.freeze({
  fixing: ranked({
    asks: "Is what is around it whole, and firmly held?",
    effort: "glance",
    values: {
      whole: "what is around it is whole and firmly held",
      slight: "it is firm all round, with no more than a hairline crack, one fixing lost or a small gap out of line",
      "part-held": "fixings are missing, and those that are left hold it",
      loose: "it is loose, taped on or cracked through, and still covers",
      hole: "a piece of it is missing",
      open: "it hangs, does not close, or is not there",
    },
    // Not met may come from a lock or a hinge alone, which are asked by themselves.
    worked: { by: "barrier-secured", met: "whole" },
  }),
  "hinges-carry": yesNo({
    asks: "Do hinges and catch carry the door or lid? (Yes where there are none.)",
    effort: "glance",
    yes: "hinges and catch carry it, or it has none",
    no: "a hinge or catch has gone, and the door or lid does not stay shut",
    worse: "no",
  }),
});
