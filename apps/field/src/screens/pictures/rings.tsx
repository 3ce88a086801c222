import type { Pictures } from "../../engine/picture-view.ts";
import { Picture } from "../../parts/picture.tsx";
import { Section } from "../../parts/section.tsx";
import { PICTURES } from "../../words/installation.ts";

/** Every ring that was read at its points, with what explains the readings; nothing where there is none. */
export function Rings({ rings }: { readonly rings: Pictures["rings"] }) {
  if (rings.length === 0) return null;
  return (
    <Section title={PICTURES.rings}>
      {rings.map(({ path, name, svg, words }) => (
        <section key={path} aria-label={name}>
          <Picture svg={svg} caption={name} />
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
