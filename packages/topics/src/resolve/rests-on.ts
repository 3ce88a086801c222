import type { Scope } from "./scope.ts";
import { namesIn } from "./shared.ts";

/** Everything that some names rest on, through states, the names themselves among it. */
export function restsOn(names: readonly string[], scope: Scope): readonly string[] {
  const seen = new Set<string>();
  const open = [...names];
  for (let name = open.pop(); name !== undefined; name = open.pop()) {
    if (seen.has(name)) continue;
    seen.add(name);
    const found = scope.get(name);
    if (found?.kind === "state")
      for (const { when } of found.values) if (when !== undefined) open.push(...namesIn(when));
  }
  return [...seen];
}
