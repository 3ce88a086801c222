import { useLayoutEffect, useState } from "preact/hooks";
import { bringIntoView } from "./bring-into-view.ts";

/** Moves the focus to a control by its id, once that is drawn. */
export function useSought(): (id: string) => void {
  const [sought, setSought] = useState<{ readonly id: string }>();
  // The field sought may be drawn only now: a point that was added, live tests that were waiting. Who types on without
  // looking up types into it: the focus moves before the next key can come.
  useLayoutEffect(() => {
    if (sought === undefined) return;
    const found = document.getElementById(sought.id) ?? document.querySelector<HTMLElement>(".live-gate button");
    found?.focus({ preventScroll: true });
    found?.scrollIntoView({ block: "nearest" });
    bringIntoView(found);
  }, [sought]);
  return (id) => setSought({ id });
}
