import { usePlace } from "../../engine/follow.ts";
import { shownWords } from "../../keypad/reading.ts";
import { within } from "../../keypad/spot.ts";
import { usePicked } from "../../keypad/use-record.ts";
import { VerdictWord } from "../../keypad/verdict.tsx";
import { useSession } from "../../shell/job.ts";
import { linkTo } from "../../shell/route.ts";
import { INSTALLATION } from "../../words/installation.ts";

/** Where the installation begins: how it is earthed, protected and measured. */
export function OriginRow() {
  const { job } = useSession();
  const detail = usePicked((record) => {
    const ze = shownWords(record.value("supply/readings/ze"));
    const rated = within(record.value("supply/device"), ["rated"]);
    return [
      shownWords(record.value("supply/earthing")),
      typeof rated === "string" ? rated : "",
      ze === "" ? "" : `Ze ${ze}`,
    ]
      .filter(Boolean)
      .join(", ");
  });
  const judged = usePlace("supply");
  return (
    <li class="line-row origin" style={{ "--depth": 0 }}>
      <a class="line-link" href={linkTo("job", job, "supply")}>
        <svg class="line-node" width="26" height="26" viewBox="0 0 26 26" aria-hidden="true">
          <circle cx="13" cy="13" r="7" fill="none" stroke="currentColor" stroke-width="2" />
        </svg>
        <span class="line-name">
          <strong>{INSTALLATION.origin}</strong>
          <span class="quiet small">{detail}</span>
          {judged !== undefined && <VerdictWord verdict={judged.worst} word={judged.worstWord} />}
        </span>
      </a>
    </li>
  );
}
