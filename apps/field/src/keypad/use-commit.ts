import { useEffect } from "preact/hooks";
import { useSession } from "../shell/job.ts";
import { isReading } from "./fields.ts";
import { valueAt } from "./spot.ts";
import { readTyped } from "./typed.ts";
import type { Typing } from "./use-typing.ts";
import type { Writing } from "./use-writing.ts";

/** Takes what was typed. A fault stays to be put right; a value that is asked about is kept all the same. */
export function useCommit(typing: Typing, writing: Writing, top: string | undefined): () => "fault" | "asked" | "done" {
  const { record } = useSession();
  const commit = () => {
    const { typed, open } = typing.latest.current;
    if (typed === undefined || open === undefined || !isReading(open)) return "done";
    const read = readTyped(typed.text, typed.symbol, open.kind, top);
    if ("fault" in read) {
      typing.tell(read.fault);
      return "fault";
    }
    typing.drop();
    if ("shown" in read) return writing.writeShown(open, read.shown) ? "asked" : "done";
    if (valueAt(record, open.spot) !== undefined) writing.write(open, null);
    return "done";
  };
  // A phone may throw the tab away once it is in the background.
  useEffect(() => {
    const hidden = () => document.visibilityState === "hidden" && commit();
    document.addEventListener("visibilitychange", hidden);
    return () => document.removeEventListener("visibilitychange", hidden);
  });
  return commit;
}
