import { CONDUCTORS } from "../asked.ts";
import type { Explanation } from "../explanation.ts";
import type { Fault } from "../fault.ts";
import { OPEN } from "../ring-model.ts";

export interface AbsentSaid {
  readonly kind: "absent";
  /** Whether something else carries an earth to its points: the loop test finds one. */
  readonly earthed: boolean;
}

const COMMON = 0.004;
const CPC = CONDUCTORS.indexOf("cpc");

/** No protective conductor, or one that is connected at neither end of the board. */
function absentCpc(earthed: boolean): Fault<AbsentSaid> {
  return {
    key: "absent",
    common: COMMON,
    sizes: [],
    bears(model) {
      model.stop(CPC, 0, OPEN);
      model.stop(CPC, 1, OPEN);
    },
    says: () => ({ kind: "absent", earthed }),
  };
}

export const absent: Explanation<AbsentSaid> = {
  id: "absent",
  innocent: false,
  opens: true,
  tried: ({ open, problem: { input } }) =>
    open.includes("cpc") ? [{ fault: absentCpc(input.earthedAtPoints === true) }] : [],
};
