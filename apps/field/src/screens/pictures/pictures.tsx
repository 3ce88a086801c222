import { useEffect, useState } from "preact/hooks";
import { engine } from "../../engine/client.ts";
import { useWeighing } from "../../engine/follow.ts";
import type { Pictures as Drawings } from "../../engine/picture-view.ts";
import { Notice } from "../../parts/notice.tsx";
import { Picture } from "../../parts/picture.tsx";
import { Section } from "../../parts/section.tsx";
import type { ScreenProps } from "../../shell/screens.ts";
import { PICTURES } from "../../words/installation.ts";
import { Coverage } from "./coverage.tsx";
import { Margins } from "./margins.tsx";
import { Rings } from "./rings.tsx";
import { Trends } from "./trends.tsx";

/** The installation in pictures: its line diagram, what is tight, curves in doubt, and what was seen of it. */
export default function Pictures(_: ScreenProps) {
  const view = useWeighing((weighing) => weighing.view);
  const failed = useWeighing((weighing) => weighing.failed);
  const [drawings, setDrawings] = useState<Drawings>();
  const [trouble, setTrouble] = useState<string>();
  useEffect(() => {
    if (view === undefined) return;
    let left = false;
    engine.pictures().then(
      (found) => !left && setDrawings(found),
      (error: unknown) => !left && setTrouble(error instanceof Error ? error.message : String(error)),
    );
    return () => {
      left = true;
    };
  }, [view]);
  const reason = failed ?? trouble;
  if (reason !== undefined && drawings === undefined) return <Notice kind="alert" title={PICTURES.failed(reason)} />;
  if (view === undefined || drawings === undefined) return <p aria-busy="true">{PICTURES.drawing}</p>;
  return (
    <div class="columns">
      <div>
        <Section title={PICTURES.diagram}>
          <section
            class="full-size"
            aria-label={PICTURES.diagramScroll}
            // biome-ignore lint/a11y/noNoninteractiveTabindex: what is scrolled sideways must be reached by the keyboard
            tabIndex={0}
          >
            {drawings.diagram.map((svg) => (
              <Picture key={svg} svg={svg} />
            ))}
          </section>
        </Section>
        <Section title={PICTURES.margins} help={PICTURES.marginsHelp}>
          <Margins places={view.places} />
        </Section>
      </div>
      <div>
        <Section title={PICTURES.curves}>
          {drawings.curves.length === 0 && <p class="quiet">{PICTURES.noCurves}</p>}
          {drawings.curves.map(({ path, name, svg }) => (
            <Picture key={path} svg={svg} caption={name} />
          ))}
        </Section>
        <Rings rings={drawings.rings} />
        <Trends view={view} />
        <Section title={PICTURES.coverage}>
          <Coverage samples={drawings.samples} />
        </Section>
      </div>
    </div>
  );
}
