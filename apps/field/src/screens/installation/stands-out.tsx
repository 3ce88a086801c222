import { useWeighing } from "../../engine/follow.ts";
import { FindingLine } from "../../keypad/verdict.tsx";
import { Section } from "../../parts/section.tsx";
import { useSession } from "../../shell/job.ts";
import { linkTo } from "../../shell/route.ts";
import { INSTALLATION } from "../../words/installation.ts";
import { whereOf } from "../finish/where.ts";

/** Every place of the installation with a limit that is not met or too near to call, beside a list of which nothing is open. */
export function StandsOut() {
  const { job, record } = useSession();
  const places = useWeighing(({ view }) => view?.places);
  const heavy = (places ?? [])
    .map(({ path, name, findings }) => ({
      path,
      name,
      findings: findings.filter(({ verdict }) => verdict === "not-met" || verdict === "too-near"),
    }))
    .filter(({ findings }) => findings.length > 0);
  return (
    <Section title={INSTALLATION.standsOut}>
      {heavy.length === 0 && <p class="quiet">{INSTALLATION.nothingStandsOut}</p>}
      {heavy.map(({ path, name, findings }) => (
        <section key={path} class="sheet" aria-label={name}>
          <a class="row-link" href={linkTo("job", job, ...(whereOf(record, path) ?? []))}>
            <strong>{name}</strong>
          </a>
          {findings.map((finding) => (
            <FindingLine key={finding.check} finding={finding} path={path} titled />
          ))}
        </section>
      ))}
    </Section>
  );
}
