import { useState } from "preact/hooks";
import type { KeptFolder } from "../../engine/folder-view.ts";
import { keepFolder, useKeptFolder } from "../../firm/kept.ts";
import { Section } from "../../parts/section.tsx";
import { FIRM } from "../../words/firm.ts";
import { PickFolder } from "./pick-folder.tsx";
import { type Taking, takeFolder } from "./take-folder.ts";

/** The firm's own folder of topics and standing views: chosen, shown, chosen again or taken off the device. */
export function FirmFolder() {
  const kept = useKeptFolder();
  const [state, setState] = useState<Taking>();
  const [removed, setRemoved] = useState<KeptFolder>();
  const keep = (folder: KeptFolder | null, said: Taking) =>
    keepFolder(folder).then(
      () => setState(said),
      (error: unknown) => setState({ failed: FIRM.notKept(String(error)) }),
    );
  const isBusy = state !== undefined && "busy" in state;
  return (
    <Section title={FIRM.title} help={FIRM.help}>
      {kept === undefined && <p>{FIRM.none}</p>}
      {kept !== undefined && kept !== "unread" && <Held kept={kept} />}
      <PickFolder
        isAnother={kept !== undefined}
        disabled={isBusy}
        onPick={(texts) => {
          setRemoved(undefined);
          setState({ busy: true });
          void takeFolder(texts).then(setState);
        }}
      />
      <div role="status" aria-busy={isBusy ? "true" : undefined}>
        {state !== undefined && <Said state={state} />}
        {removed !== undefined && (
          <button
            type="button"
            onClick={() => {
              setRemoved(undefined);
              void keep(removed, { took: removed.label.name, words: "" });
            }}
          >
            {FIRM.putBack}
          </button>
        )}
      </div>
      {kept !== undefined && kept !== "unread" && (
        <button
          type="button"
          disabled={isBusy}
          onClick={() => {
            setRemoved(kept);
            void keep(null, { removed: true });
          }}
        >
          {FIRM.remove}
        </button>
      )}
    </Section>
  );
}

function Held({ kept: { label, texts } }: { readonly kept: KeptFolder }) {
  return (
    <dl class="sheet">
      <dt>{FIRM.held(label.name, label.answersFor)}</dt>
      <dd>{FIRM.texts(texts.length)}</dd>
      <dt>{FIRM.hash}</dt>
      <dd>
        <code class="hash">{label.hash}</code>
      </dd>
    </dl>
  );
}

/** What came of choosing or taking out, faults at their lines as the command tells them. */
function Said({ state }: { readonly state: Taking }) {
  if ("busy" in state) return <p>{FIRM.reading}</p>;
  if ("removed" in state) return <p>{FIRM.removed}</p>;
  if ("failed" in state) return <p class="fault">{state.failed}</p>;
  if ("took" in state)
    return (
      <>
        <p>{FIRM.took(state.took)}</p>
        {state.words !== "" && <p class="quiet small">{state.words}</p>}
      </>
    );
  return (
    <>
      <p class="fault">{FIRM.notTaken(state.problems.length)}</p>
      {state.problems.map((problem, i) => (
        // biome-ignore lint/a11y/noNoninteractiveTabindex: what is wider than the screen is scrolled by the keyboard too
        <pre key={`${i} ${problem}`} class="notice-text" tabIndex={0}>
          {problem}
        </pre>
      ))}
    </>
  );
}
