import { usePlace } from "../../engine/follow.ts";
import { FindingLine } from "../../keypad/verdict.tsx";
import { Section } from "../../parts/section.tsx";
import { CIRCUIT } from "../../words/installation.ts";

/** What follows for one place. */
export function FindingsAt({ path }: { readonly path: string }) {
  const place = usePlace(path);
  const findings = place?.findings.filter(({ verdict }) => verdict !== "not-applicable") ?? [];
  if (place === undefined || findings.length === 0) return null;
  return (
    <Section title={CIRCUIT.findings(place.name)}>
      {findings.map((finding) => (
        <FindingLine key={finding.check} finding={finding} path={path} titled />
      ))}
    </Section>
  );
}
