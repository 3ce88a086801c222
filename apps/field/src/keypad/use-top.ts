import { KINDS, type KindId } from "./kinds.ts";
import { useSetting } from "./use-setting.ts";

/**
 * Where displays of a function end on this device's instrument: chosen once, then offered by one key. Insulation is read
 * beyond the end so often that its usual end is offered from the start; the person sees it on the key.
 */
export function useTop(kind: KindId | undefined): readonly [top: string | undefined, keep: (top: string) => void] {
  const [chosen, choose] = useSetting(`top ${kind ?? ""}`);
  if (kind === undefined) return [undefined, choose];
  return [chosen ?? (kind === "insulation" ? KINDS.insulation.tops[0] : undefined), choose];
}
