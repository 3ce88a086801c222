import { engine } from "../../engine/client.ts";
import { useLooked } from "../../engine/use-looked.ts";
import { Section } from "../../parts/section.tsx";
import { MISFITS_HERE } from "../../words/misfits.ts";

/** Readings of one place that do not agree, with what explains them; nothing where all do. */
export function MisfitsAt({ path }: { readonly path: string }) {
  const found = useLooked((document) => engine.misfits(document))?.found;
  if (found === "failed") return <p class="fault">{MISFITS_HERE.failed}</p>;
  const here = found?.filter((misfit) => misfit.path === path) ?? [];
  if (here.length === 0) return null;
  return (
    <Section title={MISFITS_HERE.title} help={MISFITS_HERE.help}>
      {here.map(({ title, words }) => (
        <section key={title} aria-label={title}>
          <h3>{title}</h3>
          {words.map((one) => (
            <p key={one} class="small">
              {one}
            </p>
          ))}
        </section>
      ))}
    </Section>
  );
}
