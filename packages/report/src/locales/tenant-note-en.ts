import type { Nation } from "@good-grounds/core";
import { networkEmergencyNumber } from "@good-grounds/core";
import { REPORT } from "./report-en.ts";

const counted = (count: number, one: string, several: string) => `${count} ${count === 1 ? one : several}`;

/** Words of the note for whoever lives or works there: no blame, nothing of the owner. */
export const TENANT = Object.freeze({
  name: (home: boolean) => (home ? "Note for who lives here" : "Note for who uses the place"),
  over: "Electric safety test: what you need to know",
  closed: REPORT.closed,
  opening: (on: string) =>
    `The electrics here were tested on ${REPORT.day(on)}. This note says what matters to you. Whoever lets or runs the place has the full report; you may ask them for a copy.`,
  foundTitle: "What was found",
  left: "Made safe",
  group: Object.freeze({
    C1: "Do not use",
    C2: "Take care",
    FI: "Not known yet",
    open: "Not known yet",
  }),
  stop: "Do not touch it or use it. Keep children away.",
  safe: (done: string) => `Leave it as it is until it is put right. What was done: ${REPORT.closed(done)}`,
  safePlain: "Leave it as it is until it is put right.",
  /** Where nothing plainer is known to be true. */
  plain: Object.freeze({
    C1: "There is a fault here that can hurt you.",
    C2: "There is a fault here. It has to be put right soon.",
    FI: "It could not be found out if this is safe. Someone has to look at it soon.",
    open: "This is not judged yet. It may be unsafe.",
  }),
  more: (count: number) => `And ${counted(count, "more place", "more places")}. Ask whoever lets or runs it where.`,
  nothing: "Nothing was found that you have to stay away from, in what could be seen.",
  nothingInspected:
    "Nothing was looked at or tested, as far as is written down. So this note does not say that it is safe.",
  earthingOff:
    "The main earth wire may still be off. Do not use the electrics until an electrician has seen to it. Any metal part could give a shock.",
  useTitle: "What you may use",
  use: "You may go on using what is not named above, as long as it looks and sounds as it always did.",
  useOpen:
    "Nothing that was found tells you to stop using the rest. But some points are still open, so nobody can say yet that all of it is safe. Take care.",
  useNone: "Wait until somebody tells you that it is safe.",
  stopIf:
    "Stop, and switch off, if something gets hot, buzzes, smells, sparks, tingles or is broken, or if a switch in the fuse box keeps going off.",
  buttonTitle: "Test the safety switch",
  button:
    "In the fuse box there is a switch with a button marked T. Press it twice a year. The power must go off at once. Switch it on again. If the power stays on, tell whoever lets or runs the place that day.",
  buttonPerhaps:
    "Look in the fuse box for a switch with a button marked T. If there is one, press it twice a year. The power must go off at once. Switch it on again. If the power stays on, tell whoever lets or runs the place that day.",
  buttonFirst: "First save your work. Think of clocks, freezers and anything a sick person needs.",
  callTitle: "Whom to call",
  call: "A fault, or a question: whoever lets or runs the place.",
  fire: "Fire, a smell of burning, or a shock: get out and call 999.",
  network: (nation: Nation | undefined) => {
    const number = nation === undefined ? undefined : networkEmergencyNumber(nation);
    return number === undefined
      ? "No power in the street, or damage where the cable comes in: call the number at the meter or on the bill."
      : `No power in the street, or damage where the cable comes in: call ${number}.`;
  },
  owner: "the owner",
  by: (firm: string) => `Tested by ${firm}.`,
});
