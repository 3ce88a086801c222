export * from "./arms-reach.ts";
export * from "./ip-code.ts";
export * from "./jointed-finger.ts";
export * from "./objects.ts";
export * from "./probes.ts";
export * from "./requirements.ts";
export * from "./water.ts";
