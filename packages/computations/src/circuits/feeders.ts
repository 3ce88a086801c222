import { CPC_ARRANGEMENTS, factNotKnown, INSULATIONS, isKnown, notKnown, TERM } from "@good-grounds/core";
import { type Circuit, type Installation, MATTER } from "@good-grounds/inspection";
import type { LoopSection } from "@good-grounds/measurement";
import { asksQuantities, asksWords, type Given } from "../need.ts";
import { isAtOrigin, isFedFromUnknown } from "./fed-from.ts";

/** What is asked of the circuits that feed a board, nearest to the board first; none where it is fed from the supply. */
export const feedersNeeds = {
  feederR1r2: asksQuantities(TERM.measuredR1R2, "0.10 Ω, one for each circuit that feeds the board"),
  feederFrom: asksQuantities(TERM.measuredZdb, "0.20 Ω, the loop where each of them starts"),
  feederTemperature: asksQuantities(TERM.testTemperature, "12 °C, one for each of them"),
  feederInsulation: asksWords(MATTER.insulation, INSULATIONS, "one for each of them"),
  feederCpc: asksWords(MATTER.cpcArrangement, CPC_ARRANGEMENTS, "one for each of them"),
};

type Feeders = Given<typeof feedersNeeds>;

/** The circuits that feed the board of a circuit, up to the origin or to where nobody recorded what feeds it. */
export function feedersOf({ board }: Circuit, { supply }: Installation): Feeders {
  const chain: Circuit[] = [];
  let last = board;
  for (let at = board.feeder; at !== undefined; at = at.board.feeder) {
    chain.push(at);
    last = at.board;
  }
  const unseen = isFedFromUnknown(last) ? [NOT_RECORDED] : [];
  const before = ({ board: from }: Circuit) => (isAtOrigin(from) && !isKnown(from.zdb) ? supply.ze : from.zdb);
  return {
    feederR1r2: [...chain.map(({ readings }) => readings.r1r2), ...unseen],
    feederFrom: chain.map(before),
    feederTemperature: chain.map(({ readings }) => readings.temperature),
    feederInsulation: chain.map(({ cable }) => cable.insulation),
    feederCpc: chain.map(({ cable }) => cable.cpcArrangement),
  };
}

const NOT_RECORDED = notKnown(TERM.measuredR1R2, ["feederR1r2"]);
const NO_LOOP = notKnown(TERM.measuredZdb, ["feederFrom"]);
const NO_TEMPERATURE = notKnown(TERM.testTemperature, ["feederTemperature"]);
const NO_INSULATION = factNotKnown(MATTER.insulation, ["feederInsulation"]);
const NO_ARRANGEMENT = factNotKnown(MATTER.cpcArrangement, ["feederCpc"]);

/** The sections of the loop that the answers speak of; what was not said of one is not known. */
export function asSections(given: Feeders): readonly LoopSection[] {
  return given.feederR1r2.map((r1r2, i) => ({
    r1r2,
    from: given.feederFrom[i] ?? NO_LOOP,
    temperature: given.feederTemperature[i] ?? NO_TEMPERATURE,
    insulation: given.feederInsulation[i] ?? NO_INSULATION,
    cpcArrangement: given.feederCpc[i] ?? NO_ARRANGEMENT,
  }));
}
