import type { Topic } from "../topic.ts";
import { earthingConductorUndersized } from "./earthing-conductor-undersized.ts";
import { electrodeResistance } from "./electrode-resistance.ts";
import { mainBondingAbsent } from "./main-bonding-absent.ts";
import { mainBondingHidden } from "./main-bonding-hidden.ts";
import { mainBondingResistance } from "./main-bonding-resistance.ts";
import { mainBondingUndersized } from "./main-bonding-undersized.ts";
import { meansOfEarthingHidden } from "./means-of-earthing-hidden.ts";
import { noMeansOfEarthing } from "./no-means-of-earthing.ts";

export const EARTHING: readonly Topic[] = Object.freeze([
  noMeansOfEarthing,
  meansOfEarthingHidden,
  earthingConductorUndersized,
  electrodeResistance,
  mainBondingAbsent,
  mainBondingUndersized,
  mainBondingHidden,
  mainBondingResistance,
]);
