import { useState } from "preact/hooks";
import { keepPhotographs, readCopy } from "../../hand-over/copy.ts";
import { Section } from "../../parts/section.tsx";
import { useJob } from "../../shell/job.ts";
import { HAND_OVER } from "../../words/finish.ts";

/** Takes a colleague's copy of this job in. */
export function Join() {
  const session = useJob();
  const [words, setWords] = useState("");
  const take = async (file: File | undefined) => {
    if (file === undefined) return;
    setWords(HAND_OVER.working);
    const copy = await readCopy(new Uint8Array(await file.arrayBuffer())).catch(() => undefined);
    if (copy === undefined) return setWords(HAND_OVER.notACopy);
    if (copy.job !== session.job) return setWords(HAND_OVER.otherJob);
    await keepPhotographs(copy);
    setWords(HAND_OVER.joined(await session.join(copy.entries)));
  };
  return (
    <Section title={HAND_OVER.join} help={HAND_OVER.joinHelp}>
      <label class="button">
        {HAND_OVER.join}
        <input
          class="unseen"
          type="file"
          accept=".good-grounds-job,application/zip"
          onChange={({ currentTarget }) => void take(currentTarget.files?.[0])}
        />
      </label>
      <p role="status">{words}</p>
    </Section>
  );
}
