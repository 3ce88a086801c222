import { matter } from "@good-grounds/core";

/** What the judgements of the checks are about: the question each line of an argument answers. */
export const QUESTION = Object.freeze({
  disconnection: matter("disconnection", "automatic disconnection in time"),
  overcurrentDisconnects: matter("overcurrent-disconnects", "disconnection by the overcurrent device"),
  residualDisconnects: matter("residual-disconnects", "disconnection by the RCD"),
  hotLoop: matter("hot-loop", "loop impedance hot against its limit"),
  touchVoltage: matter("touch-voltage", "touch voltage at the RCD's operating current"),
  thumbRule: matter("thumb-rule", "reading as measured against 0.8 of the limit"),
  readingsAgree: matter("readings-agree", "Zs agrees with the loop before the circuit and R1+R2"),
  resistanceFitsCable: matter("resistance-fits-cable", "R1+R2 fits the length and size of the cable"),
  ringSound: matter("ring-sound", "the readings are those of one sound ring"),
  ringLegsAgree: matter("ring-legs-agree", "line and neutral conductors of the ring agree end to end"),
  ringHabit: matter("ring-habit", "line and neutral within 0.05 Ω of each other"),
  ringCpcFits: matter("ring-cpc-fits", "protective conductor of the ring fits its line conductor"),
  ringLengthFits: matter("ring-length-fits", "end-to-end resistance fits the length of the ring"),
  ringPointLineNeutral: matter("ring-point-ln", "line to neutral reading at a point of the ring"),
  ringPointLineCpc: matter("ring-point-lcpc", "line to protective conductor reading at a point of the ring"),
  ringFurthest: matter("ring-furthest", "R1+R2 of the ring against its end-to-end resistances"),
  insulationSound: matter("insulation-sound", "insulation resistance"),
  insulationLiveLive: matter("insulation-live-live", "insulation resistance between live conductors"),
  insulationLiveEarth: matter("insulation-live-earth", "insulation resistance between live conductors and earth"),
  rcdOperates: matter("rcd-operates", "the RCD operates as its standard asks"),
  rcdNotSlow: matter("rcd-not-slow", "operating time at IΔn against its upper limit"),
  rcdNotFast: matter("rcd-not-fast", "operating time of a delayed RCD against its lower limit"),
  rcdFive: matter("rcd-five", "operating time at 5 IΔn against the product standard"),
  rcdButton: matter("rcd-button", "test button"),
  polarityCorrect: matter("polarity-correct", "polarity"),
  phaseSequenceCorrect: matter("phase-sequence-correct", "phase sequence"),
  electrodeSuits: matter("electrode-suits", "electrode resistance suits the RCD"),
  electrodeStable: matter("electrode-stable", "electrode resistance in the range regarded as stable"),
  loopUsual: matter("loop-usual", "external loop impedance within what is usual for the system"),
  additionalProtection: matter("additional-protection", "additional protection by an RCD of at most 30 mA"),
  printedLimit: matter("printed-limit", "loop impedance hot against the limit as printed"),
});

/** Facts that computations ask for beside those an inspection file states. */
export const ASKED = Object.freeze({
  edition: matter("edition", "edition of BS 7671"),
  use: matter("use", "use of the premises"),
  underTable411: matter("under-table-41.1", "final circuit within the scope of Table 41.1"),
});
