import { takeIn } from "../../hand-over/take-in.ts";
import { Section } from "../../parts/section.tsx";
import { useSession } from "../../shell/job.ts";
import { HAND_OVER } from "../../words/finish.ts";
import { TakingInShown, useTakingIn } from "./taking-in.tsx";

/** Takes a colleague's copy of this job in. */
export function Join() {
  const session = useSession();
  const taking = useTakingIn(
    async (copy, watch) => HAND_OVER.joined(await takeIn(copy, (entries) => session.join(entries), watch)),
    (copy) => (copy.job === session.job ? undefined : HAND_OVER.otherJob),
  );
  return (
    <Section title={HAND_OVER.join} help={HAND_OVER.joinHelp}>
      <label class="button file">
        {taking.isBusy ? HAND_OVER.working : HAND_OVER.join}
        <input
          type="file"
          disabled={taking.isBusy}
          accept=".good-grounds-job,.zip,.json,application/zip,application/json"
          onChange={({ currentTarget }) => {
            const [file] = currentTarget.files ?? [];
            // The same file can be chosen again.
            currentTarget.value = "";
            if (file !== undefined) taking.open(file);
          }}
        />
      </label>
      <TakingInShown of={taking} />
    </Section>
  );
}
