export { LOOKS as OWN_FIGURES_LOOKS } from "./looks/index.ts";
export { lookAtOwnFigures } from "./own-figures.ts";
