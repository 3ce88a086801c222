export { diagnoseInstallation } from "./diagnosis/installation/index.ts";
export * from "./diagnosis/ring/index.ts";
export * from "./earlier/index.ts";
export * from "./networks/index.ts";
export * from "./own-figures/index.ts";
export * from "./uncertainty/index.ts";
