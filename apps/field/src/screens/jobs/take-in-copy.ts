import type { Copy } from "../../hand-over/copy.ts";
import { takeIn } from "../../hand-over/take-in.ts";
import type { Watch } from "../../hand-over/watch.ts";
import { Session } from "../../record/session.ts";
import { keepJob } from "../../record/store.ts";
import { labelOf } from "../../shell/job-label.ts";

/** Takes in the copy of a job from another device, or joins it to the same job here. */
export function takeInCopy(copy: Copy, watch: Watch): Promise<void> {
  return takeIn(
    copy,
    async (entries) => {
      const session = await Session.open(copy.job);
      try {
        await session.join(entries);
        await keepJob(labelOf(copy.job, session.record, new Date().toISOString()));
      } finally {
        session.close();
      }
    },
    watch,
  );
}
