import { useEffect, useState } from "preact/hooks";
import { engine } from "../../engine/client.ts";
import type { RegisterTried } from "../../engine/issue-view.ts";
import { keepRegister, keptRegister } from "../../issued/kept.ts";
import { Section } from "../../parts/section.tsx";
import { ISSUE } from "../../words/issue.ts";
import { FileButton } from "../jobs/file-button.tsx";

type Held = Extract<RegisterTried, { readonly isWell: true }>;

/** The register of the firm's keys: chosen, shown, or taken off the device. */
export function FirmRegister() {
  const [held, setHeld] = useState<Held | "none">();
  const [fault, setFault] = useState<string>();
  const failed = (error: unknown) => setFault(ISSUE.keyNotKept(String(error)));
  const look = async () => {
    const text = await keptRegister();
    const tried = text === undefined ? undefined : await engine.tryRegister(text);
    setHeld(tried?.isWell === true ? tried : "none");
  };
  useEffect(() => void look().catch(failed), []);
  const take = async (file: File) => {
    setFault(undefined);
    const text = await file.text();
    const tried = await engine.tryRegister(text);
    if (!tried.isWell) return setFault(ISSUE.registerNot(tried.why));
    await keepRegister(text);
    setHeld(tried);
  };
  return (
    <Section title={ISSUE.register} help={ISSUE.registerHelp}>
      {held === "none" && <p>{ISSUE.noRegister}</p>}
      {held !== undefined && held !== "none" && (
        <dl class="sheet">
          <dt>{ISSUE.held(held.number, held.keys)}</dt>
          <dt>{ISSUE.root}</dt>
          <dd>
            <code class="hash">{held.root}</code>
          </dd>
        </dl>
      )}
      <FileButton
        words={ISSUE.chooseRegister}
        help={ISSUE.registerFile}
        accept=".json,application/json"
        disabled={false}
        onFile={(file) => void take(file).catch(failed)}
      />
      {held !== undefined && held !== "none" && (
        <button type="button" onClick={() => void keepRegister(null).then(look).catch(failed)}>
          {ISSUE.registerOff}
        </button>
      )}
      <div role="status">{fault !== undefined && <p class="fault">{fault}</p>}</div>
    </Section>
  );
}
