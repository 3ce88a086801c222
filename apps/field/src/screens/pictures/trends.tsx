import { useEffect, useState } from "preact/hooks";
import { engine } from "../../engine/client.ts";
import type { TrendView } from "../../engine/picture-view.ts";
import type { Data } from "../../engine/protocol.ts";
import type { View } from "../../engine/view.ts";
import { Picture } from "../../parts/picture.tsx";
import { Section } from "../../parts/section.tsx";
import { useSession } from "../../shell/job.ts";
import { PICTURES } from "../../words/installation.ts";

/** Where last time's file is kept with the job. */
const EARLIER = "~earlier";

/** Readings over the years; nothing where no earlier file is kept with the job. */
export function Trends({ view }: { readonly view: View }) {
  const { record } = useSession();
  const [trends, setTrends] = useState<readonly TrendView[]>([]);
  useEffect(() => {
    const earlier = record
      .names(EARLIER)
      .map((name) => record.value(`${EARLIER}/${name}`) as Data | undefined)
      .filter((data) => data !== undefined);
    if (earlier.length === 0) return;
    let left = false;
    engine.trends(earlier).then(
      (found) => !left && setTrends(found),
      () => undefined,
    );
    return () => {
      left = true;
    };
  }, [view, record]);
  if (trends.length === 0) return null;
  return (
    <Section title={PICTURES.trends}>
      {trends.map(({ name, words, svg }) => (
        <div key={name} class="trend">
          <Picture svg={svg} />
          <p>
            <strong>{name}</strong> {words}
          </p>
        </div>
      ))}
    </Section>
  );
}
