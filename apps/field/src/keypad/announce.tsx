import { useWeighing } from "../engine/follow.ts";
import { useSession } from "../shell/job.ts";
import { KEYPAD } from "../words/keypad.ts";
import type { ReadingField } from "./fields.ts";
import { takenOf } from "./reading.ts";
import { valueAt } from "./spot.ts";
import { verdictWords } from "./verdict.tsx";

/** Says to those who do not see it what came of the reading entered last, once it is weighed. */
export function Announce({ entered }: { readonly entered: ReadingField | undefined }) {
  const { record } = useSession();
  const words = useWeighing(({ view, behind }) => {
    const [about] = entered?.about ?? [];
    const shown = entered === undefined ? undefined : takenOf(valueAt(record, entered.spot))?.shown;
    if (entered === undefined || shown === undefined || behind) return "";
    const place = view?.places.find(({ path }) => path === about?.place);
    const finding = place?.findings.find(({ check }) => check === about?.check);
    if (finding === undefined) return "";
    return KEYPAD.announce(entered.label, shown, `${finding.verdictWord}. ${verdictWords(finding)}`);
  });
  return (
    <p class="unseen" role="status">
      {words}
    </p>
  );
}
