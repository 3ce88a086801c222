import { Notice } from "../parts/notice.tsx";
import Check from "../screens/check/check.tsx";
import Jobs from "../screens/jobs/jobs.tsx";
import Settings from "../screens/settings/settings.tsx";
import { SHELL } from "../words/shell.ts";
import { JobFrame } from "./job-frame.tsx";
import { isPlaceLost } from "./place.ts";
import { useRoute } from "./route.ts";
import { Trouble } from "./trouble.tsx";
import { useUpdate } from "./update.ts";

/** The whole app: the list of jobs, the settings, the page for checking issued reports, or one job with its screens. */
export function App() {
  const route = useRoute();
  const [where, job, screen, ...rest] = route ?? [];
  const changeOver = useUpdate();
  return (
    <>
      {/* A button: the address after "#" says where the app is, so a link within the page cannot be followed. */}
      <button type="button" class="skip" onClick={() => document.getElementById("main")?.focus()}>
        {SHELL.skip}
      </button>
      <Trouble key={`${where} ${job}`} job={where === "job" ? job : undefined}>
        {where === "job" && job !== undefined ? (
          <JobFrame key={job} job={job} screen={screen} rest={rest} />
        ) : where === "settings" ? (
          <Settings />
        ) : where === "check" ? (
          <Check />
        ) : (
          <Jobs lostPlace={route === undefined || isPlaceLost()} />
        )}
      </Trouble>
      {changeOver !== undefined && (
        <aside class="update" aria-label={SHELL.updates}>
          <Notice kind="status">
            <div class="row between">
              <span>{SHELL.update}</span>
              <button type="button" onClick={() => void changeOver()}>
                {SHELL.takeUpdate}
              </button>
            </div>
          </Notice>
        </aside>
      )}
    </>
  );
}
