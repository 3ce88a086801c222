import { usePicked } from "../keypad/use-record.ts";
import { untold } from "../screens/danger/told.ts";
import { DANGER_BANNER } from "../words/shell.ts";
import { useSession } from "./job.ts";
import { linkTo } from "./route.ts";

/** Stands on every screen of a job as long as somebody has not been told of a danger that was found. */
export function UntoldBanner() {
  const { job } = useSession();
  const open = usePicked((record) => untold(record).length);
  if (open === 0) return null;
  return (
    <div class="alarm untold" role="alert">
      <svg viewBox="0 0 30 24" width="30" height="24" aria-hidden="true">
        <path d="M1 1h7v22H1zM11.5 1h7v22h-7zM22 1h7v22h-7z" fill="currentColor" />
      </svg>
      <strong>{DANGER_BANNER.untold(open)}</strong>
      <a class="button" href={linkTo("job", job, "danger")}>
        {DANGER_BANNER.tell}
      </a>
    </div>
  );
}
