import Jobs from "../screens/jobs/jobs.tsx";
import { SHELL } from "../words/shell.ts";
import { JobFrame } from "./job-frame.tsx";
import { useRoute } from "./route.ts";

/** The whole app: the list of jobs, or one job with its screens. */
export function App() {
  const [where, job, screen, ...rest] = useRoute();
  return (
    <>
      <a class="skip" href="#main">
        {SHELL.skip}
      </a>
      {where === "job" && job !== undefined ? <JobFrame key={job} job={job} screen={screen} rest={rest} /> : <Jobs />}
    </>
  );
}
