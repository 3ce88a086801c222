import { farmhouse } from "./farmhouse.ts";
import { terracedHouse } from "./terraced-house.ts";
import { workshop } from "./workshop.ts";

/** Every invented installation, by the name of its file. */
export const SCENARIOS = Object.freeze({ "terraced-house": terracedHouse, farmhouse, workshop });
