import { isKnownFact } from "@good-grounds/core";
import { rcdsOf } from "../rcds-of.ts";
import type { ContradictionRow } from "./row.ts";

/** The button of an RCD trips it, and by the instrument it does not open, or not in time. Both can be so: it is asked. */
export const BUTTON_BESIDE_FAILED_TIME: ContradictionRow = {
  id: "button-beside-failed-time",
  find: ({ installation, weighing: { boards, circuits } }) => {
    const findings = [...boards.flat(), ...circuits.flat()].filter(({ check }) => check === "rcd-time");
    const failed = new Set(
      findings.filter(({ judgement }) => judgement.verdict === "not-met").map(({ path }) => path.join("/")),
    );
    return rcdsOf(installation).flatMap(({ path, button }) =>
      isKnownFact(button) && button.word === "trips" && failed.has(path.join("/"))
        ? [{ places: [path], check: "rcd-time" }]
        : [],
    );
  },
};
