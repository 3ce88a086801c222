import { useEffect, useState } from "preact/hooks";
import { Notice } from "../parts/notice.tsx";
import { unkeptJobs } from "../record/session.ts";
import { titleOf } from "./job-label.ts";
import { notKept } from "./kept.tsx";

/** Jobs that were left while something of them could not be kept: it goes on being tried, and it is told. */
export function UnkeptJobs() {
  const [left, setLeft] = useState(unkeptJobs);
  useEffect(() => {
    const timer = setInterval(() => setLeft(unkeptJobs()), 2000);
    return () => clearInterval(timer);
  }, []);
  return (
    <>
      {left.map((session) => (
        <Notice key={session.job} kind="alert" title={titleOf(session.record)}>
          <p>{notKept(session.keeping.trouble ?? "")}</p>
        </Notice>
      ))}
    </>
  );
}
