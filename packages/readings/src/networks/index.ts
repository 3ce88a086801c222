export { type ConductorRun, conductorOhms } from "./conductor.ts";
export { MOST_NODES, type Place as NetworkPlace, type Resistor, SolvedNetwork } from "./network.ts";
