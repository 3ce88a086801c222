import { slipsBetween } from "./slips.ts";

/** The names that a misspelt one most probably stands for, nearest first; names alike only by chance are left out. */
export function nearTo(name: string, names: readonly string[]): readonly string[] {
  const most = Math.max(1, Math.floor(name.length / 3));
  return names
    .map((one) => [one, slipsBetween(name, one)] as const)
    .filter(([one, far]) => far <= most || (name.length > 3 && one.split("-").includes(name)))
    .sort((a, b) => a[1] - b[1])
    .slice(0, 3)
    .map(([one]) => one);
}
