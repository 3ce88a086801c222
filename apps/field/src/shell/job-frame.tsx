import { useEffect, useState } from "preact/hooks";
import { Session } from "../record/session.ts";
import Overview from "../screens/overview/overview.tsx";
import { SHELL } from "../words/shell.ts";
import { JobContext } from "./job.ts";
import { Loaded } from "./loaded.tsx";
import { SCREENS } from "./screens.ts";

interface JobFrameProps {
  readonly job: string;
  readonly screen: string | undefined;
  readonly rest: readonly string[];
}

/** An open job: its header, and the screen that is open. */
export function JobFrame({ job, screen, rest }: JobFrameProps) {
  const [session, setSession] = useState<Session>();
  useEffect(() => {
    let opened: Session | undefined;
    let left = false;
    void Session.open(job).then((one) => {
      opened = one;
      if (left) one.close();
      else setSession(one);
    });
    return () => {
      left = true;
      opened?.close();
    };
  }, [job]);
  if (session === undefined) return <p>{SHELL.loading}</p>;
  const found = SCREENS.find(({ id }) => id === screen);
  return (
    <JobContext.Provider value={session}>
      <main id="main">
        <h1>{found?.title ?? SHELL.overview}</h1>
        {found === undefined ? <Overview rest={rest} /> : <Loaded key={found.id} screen={found} rest={rest} />}
      </main>
    </JobContext.Provider>
  );
}
