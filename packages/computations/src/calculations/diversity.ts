import { isKnownFact, matter, notKnown, TERM } from "@good-grounds/core";
import { DIVERSITY_LOADS, DIVERSITY_PREMISES } from "@good-grounds/tables";
import { calculation } from "../check.ts";
import { afterDiversity } from "../circuits/demand.ts";
import { asksQuantities, asksWord, asksYesNo } from "../need.ts";

const KIND = matter("diversity-load", "kind of load");
const PREMISES = matter("diversity-premises", "kind of premises");
const SOCKET = matter("cooker-socket", "socket-outlet on the cooker control unit");

/** Demand after the handbook's diversity for loads of one kind, in A. An allowance for judgement, no requirement. */
export const diversity = calculation({
  id: "diversity",
  title: "Demand after diversity of loads of one kind",
  formula: "by the handbook's allowance",
  regulations: ["311.1"],
  needs: {
    kind: asksWord(KIND, DIVERSITY_LOADS),
    premises: asksWord(PREMISES, DIVERSITY_PREMISES),
    loads: asksQuantities(TERM.demandPart, "52.2 A, one for each"),
    socket: asksYesNo(SOCKET, "cooking in a household only"),
  },
  compute({ kind, premises, loads, socket }, reckon) {
    if (!isKnownFact(kind) || !isKnownFact(premises) || loads.length === 0) {
      const missing = loads.length === 0 ? [notKnown(TERM.demandPart, ["loads"])] : [];
      return { results: [reckon.lookedUp(TERM.demandPart, undefined, kind, premises, ...missing)], remarks: [] };
    }
    const withSocket = kind.word === "cooking" && isKnownFact(socket) && socket.word;
    return { results: [afterDiversity(kind.word, premises.word, loads, reckon, withSocket)], remarks: [] };
  },
  examples: [
    {
      name: "12 kW cooker with a socket",
      given: { kind: "cooking", premises: "household", loads: ["52.1739 A"], socket: "yes" },
      values: { "demand-part": { value: 27.6522, within: 1e-3 } },
      source: "10 + 0.3 × (12000 ÷ 230 − 10) + 5",
    },
    {
      name: "6 kW of heating",
      given: { kind: "heating-and-power", premises: "household", loads: ["26.0870 A"] },
      values: { "demand-part": { value: 18.0435, within: 1e-3 } },
      source: "10 + 0.5 × (6000 ÷ 230 − 10)",
    },
    {
      name: "three showers in a hotel",
      given: { kind: "instantaneous-water-heaters", premises: "hotel", loads: ["30 A", "40 A", "20 A"] },
      values: { "demand-part": { value: 75, within: 1e-9 } },
      source: "40 + 30 + 0.25 × 20",
    },
    {
      name: "premises not given",
      given: { kind: "cooking", loads: ["52 A"] },
      missing: ["diversity-premises"],
      source: "input missing",
    },
  ],
});
