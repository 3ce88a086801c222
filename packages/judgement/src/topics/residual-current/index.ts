import type { Topic } from "../topic.ts";
import { socketsNoRcd } from "./sockets-no-rcd.ts";

export const RESIDUAL_CURRENT: readonly Topic[] = Object.freeze([socketsNoRcd]);
