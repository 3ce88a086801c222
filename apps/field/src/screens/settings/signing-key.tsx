import { useEffect, useState } from "preact/hooks";
import { engine } from "../../engine/client.ts";
import type { KeyView } from "../../engine/issue-view.ts";
import { save } from "../../hand-over/save.ts";
import { keepKey, keptKey } from "../../issued/kept.ts";
import { dayOf } from "../../parts/clock.ts";
import { Section } from "../../parts/section.tsx";
import { ISSUE } from "../../words/issue.ts";
import { NewKey } from "./new-key.tsx";

interface Held {
  readonly text: string;
  readonly view: KeyView;
}

const JSON_TYPE = "application/json";

/** The key for signing reports: made here, shown, its parts saved, or taken off the device. */
export function SigningKey() {
  const [held, setHeld] = useState<Held | "none">();
  const [said, setSaid] = useState<{ readonly words: string; readonly isFault?: boolean }>();
  const look = async () => {
    const text = await keptKey();
    setHeld(text === undefined ? "none" : { text, view: await engine.keyView(text) });
  };
  const failed = (error: unknown) => setSaid({ words: ISSUE.keyNotKept(String(error)), isFault: true });
  useEffect(() => void look().catch(failed), []);
  const keep = (text: string | null, words: string) =>
    keepKey(text).then(() => {
      setSaid({ words });
      return look();
    }, failed);
  return (
    <Section title={ISSUE.key} help={ISSUE.keyHelp}>
      {held === "none" && <NewKey onMade={(text) => keep(text, ISSUE.keyMade)} />}
      {held !== undefined && held !== "none" && <TheKey {...held} onTakenOff={() => keep(null, ISSUE.off)} />}
      <div role="status">{said !== undefined && <p class={said.isFault ? "fault" : undefined}>{said.words}</p>}</div>
    </Section>
  );
}

function TheKey({ text, view, onTakenOff }: Held & { readonly onTakenOff: () => void }) {
  const [sure, setSure] = useState(false);
  const { person, device, made, key, publicPart } = view;
  const name = `${person} ${device}`.replaceAll(/[^\p{L}\p{N}]+/gu, "-").toLowerCase();
  return (
    <>
      <dl class="sheet">
        <dt>{ISSUE.heldBy(person, device)}</dt>
        <dd>{ISSUE.madeOn(dayOf(made))}</dd>
        <dt>{ISSUE.digits}</dt>
        <dd>
          <code class="hash">{key.slice(0, 16)}</code>
        </dd>
      </dl>
      <div class="stack">
        <button type="button" onClick={() => void save(`${name}-public-key.json`, JSON_TYPE, publicPart)}>
          {ISSUE.publicPart}
        </button>
        <p class="quiet small">{ISSUE.publicPartHelp}</p>
        <button type="button" onClick={() => void save(`${name}-key.json`, JSON_TYPE, text)}>
          {ISSUE.backUp}
        </button>
        <p class="quiet small">{ISSUE.backUpHelp}</p>
        {sure ? (
          <div role="alert" class="sheet">
            <p>{ISSUE.takeOffSure}</p>
            <button type="button" onClick={onTakenOff}>
              {ISSUE.takeOffNow}
            </button>
            <button type="button" onClick={() => setSure(false)}>
              {ISSUE.cancel}
            </button>
          </div>
        ) : (
          <button type="button" onClick={() => setSure(true)}>
            {ISSUE.takeOff}
          </button>
        )}
      </div>
    </>
  );
}
