import { useState } from "preact/hooks";
import { keepPhotographs, readCopy } from "../../hand-over/copy.ts";
import { Section } from "../../parts/section.tsx";
import { Contradiction } from "../../record/session.ts";
import { useSession } from "../../shell/job.ts";
import { HAND_OVER } from "../../words/finish.ts";

/** Takes a colleague's copy of this job in. */
export function Join() {
  const session = useSession();
  const [words, setWords] = useState("");
  const [busy, setBusy] = useState(false);
  const take = async (file: File): Promise<string> => {
    const copy = await readCopy(new Uint8Array(await file.arrayBuffer())).catch(() => undefined);
    if (copy === undefined) return HAND_OVER.notACopy;
    if (copy.job !== session.job) return HAND_OVER.otherJob;
    try {
      // Photographs first: nothing speaks of one that is not here yet.
      await keepPhotographs(copy);
      const fresh = await session.join(copy.entries);
      return [HAND_OVER.joined(fresh), copy.damaged > 0 ? HAND_OVER.damaged(copy.damaged) : ""].join(" ").trim();
    } catch (error) {
      return error instanceof Contradiction ? HAND_OVER.contradicts : HAND_OVER.noRoom;
    }
  };
  return (
    <Section title={HAND_OVER.join} help={HAND_OVER.joinHelp}>
      <label class="button file">
        {busy ? HAND_OVER.working : HAND_OVER.join}
        <input
          type="file"
          disabled={busy}
          accept=".good-grounds-job,.zip,.json,application/zip"
          onChange={async ({ currentTarget }) => {
            const [file] = currentTarget.files ?? [];
            // The same file can be chosen again.
            currentTarget.value = "";
            if (file === undefined) return;
            setBusy(true);
            setWords(HAND_OVER.working);
            setWords(await take(file).catch(() => HAND_OVER.notACopy));
            setBusy(false);
          }}
        />
      </label>
      <p role="status">{words}</p>
    </Section>
  );
}
