export * from "./agreement/index.ts";
export * from "./duties/index.ts";
export * from "./outcome/issue.ts";
export { harm } from "./outcome/near-to-harm.ts";
export * from "./outcome/outcome.ts";
export { isReasonOfItsOwn } from "./outcome/written-reason.ts";
export * from "./reasoning/index.ts";
export * from "./weigh.ts";
