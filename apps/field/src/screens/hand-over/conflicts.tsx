import { Conflict } from "../../parts/conflict.tsx";
import { Section } from "../../parts/section.tsx";
import type { Value } from "../../record/entry.ts";
import { useField, useJob } from "../../shell/job.ts";
import { HAND_OVER } from "../../words/finish.ts";

/** Every place where two people wrote different values, each for a choice. */
export function Conflicts() {
  const places = useJob().record.conflicts();
  if (places.length === 0) return null;
  return (
    <Section title={HAND_OVER.conflicts} help={HAND_OVER.conflictsHelp}>
      {places.map((path) => (
        <One key={path} path={path} />
      ))}
    </Section>
  );
}

function One({ path }: { readonly path: string }) {
  const field = useField(path);
  return (
    <>
      <p class="small quiet">{path.replaceAll("/", " › ")}</p>
      <Conflict field={field} show={shown} />
    </>
  );
}

function shown(value: Value): string {
  if (typeof value !== "object" || value === null) return String(value);
  if (Array.isArray(value)) return value.map(shown).join(", ");
  const { shown: reading } = value as { readonly shown?: Value };
  return typeof reading === "string"
    ? reading
    : Object.values(value)
        .map((one) => shown(one as Value))
        .join(", ");
}
