import type { Register } from "./register.ts";

/** Whether a register has a key that has not ended at a moment. */
export function standsIn({ keys }: Register, key: string, at: string): boolean {
  return keys.some((one) => one.key === key && one.added <= at && (one.ended === undefined || at < one.ended.since));
}
