import { useEffect, useState } from "preact/hooks";
import { engine } from "../../engine/client.ts";
import { letterOf } from "../../hand-over/letter.ts";
import { Section } from "../../parts/section.tsx";
import { documentOf, membersOf } from "../../record/document.ts";
import { useJob } from "../../shell/job.ts";
import { HAND_OVER } from "../../words/finish.ts";
import { askedOf } from "../observations/asked.ts";
import { chosenOf } from "../observations/read.ts";

/** The letter for the client, to read, copy or send. */
export function Letter() {
  const { record } = useJob();
  const [sentences, setSentences] = useState<ReadonlyMap<string, string>>(new Map());
  const [copied, setCopied] = useState(false);
  const size = record.size;
  useEffect(() => {
    let left = false;
    const work = async () => {
      const found = new Map<string, string>();
      // Findings of a place answer facts, so the job is weighed as it stands now.
      await engine.weigh(documentOf(record));
      for (const name of membersOf(record, "observations")) {
        const { topic, facts, positions, place } = askedOf(record, `observations/${name}`);
        const chosen = chosenOf(record, `observations/${name}`);
        if (topic === "" || chosen === undefined) continue;
        const view = await engine.reason(topic, facts, positions, place);
        const sentence = view.client[chosen];
        if (sentence !== undefined) found.set(name, sentence);
      }
      if (!left) setSentences(found);
    };
    work().catch(() => undefined);
    return () => {
      left = true;
    };
  }, [size]);
  const words = letterOf(documentOf(record), sentences);
  const share = async () => {
    try {
      if (navigator.share !== undefined) await navigator.share({ text: words });
      else {
        await navigator.clipboard.writeText(words);
        setCopied(true);
      }
    } catch {
      // Whoever closes the share sheet has changed their mind.
    }
  };
  return (
    <Section title={HAND_OVER.letter} help={HAND_OVER.letterHelp}>
      <details>
        <summary>{HAND_OVER.letter}</summary>
        <pre class="notice-text">{words}</pre>
      </details>
      <button type="button" onClick={() => void share()}>
        {"share" in navigator ? HAND_OVER.sendLetter : HAND_OVER.copyLetter}
      </button>
      <p role="status">{copied ? HAND_OVER.copied : ""}</p>
    </Section>
  );
}
