import type { ContestedPoint } from "@good-grounds/core";
import { DISTANCE } from "../../contested.ts";

/** Height or an obstacle where anyone comes: the same point, in the same words, as in every topic that asks it. */
export const HEIGHT_OR_OBSTACLE: ContestedPoint = DISTANCE;
