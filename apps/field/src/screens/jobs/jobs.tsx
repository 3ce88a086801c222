import { useEffect, useState } from "preact/hooks";
import { type JobLabel, jobs } from "../../record/store.ts";
import { linkTo } from "../../shell/route.ts";

/** The jobs on this device. */
export default function Jobs() {
  const [labels, setLabels] = useState<readonly JobLabel[]>([]);
  useEffect(() => void jobs().then(setLabels), []);
  return (
    <main id="main">
      <h1>Jobs</h1>
      <ul>
        {labels.map(({ id, title }) => (
          <li key={id}>
            <a href={linkTo("job", id)}>{title}</a>
          </li>
        ))}
      </ul>
      <a href={linkTo("job", "try")}>Open</a>
    </main>
  );
}
