export { type ConductorRun, conductorOhms } from "./conductor.ts";
export { MOST_NODES, type Place, type Resistor, SolvedNetwork } from "./network.ts";
