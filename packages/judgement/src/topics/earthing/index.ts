import type { Topic } from "../topic.ts";
import { earthNeutralJoined } from "./earth-neutral-joined.ts";
import { earthingConductorCondition } from "./earthing-conductor-condition.ts";
import { earthingConductorUndersized } from "./earthing-conductor-undersized.ts";
import { electrodeCondition } from "./electrode-condition.ts";
import { electrodeResistance } from "./electrode-resistance.ts";
import { externalImpedanceHigh } from "./external-impedance-high.ts";
import { mainBondingAbsent } from "./main-bonding-absent.ts";
import { mainBondingHidden } from "./main-bonding-hidden.ts";
import { mainBondingPosition } from "./main-bonding-position.ts";
import { mainBondingResistance } from "./main-bonding-resistance.ts";
import { mainBondingUndersized } from "./main-bonding-undersized.ts";
import { mainEarthingTerminal } from "./main-earthing-terminal.ts";
import { meansOfEarthingHidden } from "./means-of-earthing-hidden.ts";
import { noMeansOfEarthing } from "./no-means-of-earthing.ts";
import { pmeExported } from "./pme-exported.ts";
import { supplementaryBondingNeeded } from "./supplementary-bonding-needed.ts";
import { ttUnprotectedLength } from "./tt-unprotected-length.ts";

export const EARTHING: readonly Topic[] = Object.freeze([
  noMeansOfEarthing,
  meansOfEarthingHidden,
  externalImpedanceHigh,
  earthingConductorUndersized,
  earthingConductorCondition,
  mainEarthingTerminal,
  electrodeResistance,
  electrodeCondition,
  ttUnprotectedLength,
  pmeExported,
  earthNeutralJoined,
  mainBondingAbsent,
  mainBondingUndersized,
  mainBondingPosition,
  mainBondingHidden,
  mainBondingResistance,
  supplementaryBondingNeeded,
]);
