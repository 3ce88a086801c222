export { LOOKS as OWN_FIGURES_LOOKS } from "./looks/index.ts";
export { lookAtOwnFigures, SHOWN_BELOW } from "./own-figures.ts";
