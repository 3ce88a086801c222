export { ChoiceCollection } from "./choice-collection.ts";
export { cohenKappa, type Weighting } from "./cohen-kappa.ts";
export { fleissKappa } from "./fleiss-kappa.ts";
export { LEAST_COMMON } from "./two-judges.ts";
