import { useState } from "preact/hooks";
import { engine } from "../../engine/client.ts";
import type { PaperForm, PaperKind } from "../../engine/paper-view.ts";
import { inspectionText } from "../../hand-over/content.ts";
import { save } from "../../hand-over/save.ts";
import { Section } from "../../parts/section.tsx";
import { useJob } from "../../shell/job.ts";
import { PAPERS } from "../../words/papers.ts";

const TYPE: Readonly<Record<PaperForm, string>> = {
  pdf: "application/pdf",
  html: "text/html",
  txt: "text/plain",
  csv: "text/csv",
  xlsx: "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
};

const OFFERED: readonly (readonly [PaperKind, readonly PaperForm[]])[] = [
  ["letter", ["pdf", "html", "txt"]],
  ["works", ["pdf", "html", "csv", "xlsx"]],
  ["notice", ["pdf", "html"]],
  ["chart", ["pdf", "html"]],
  ["tenant", ["pdf", "html", "txt"]],
];

/** The papers for one reader each, written on the device. */
export function Papers() {
  const { record, job } = useJob();
  const [state, setState] = useState<"ready" | { readonly making: string } | { readonly failed: string }>("ready");
  const text = inspectionText(record);
  const name = String(record.value("id") ?? job);
  const write = async (kind: PaperKind, form: PaperForm, whole: string) => {
    setState({ making: PAPERS.kind[kind] });
    try {
      await save(`${name}-${kind}.${form}`, TYPE[form], await engine.paper(kind, form, whole));
      setState("ready");
    } catch (error) {
      setState({ failed: error instanceof Error ? error.message : String(error) });
    }
  };
  const isBusy = typeof state === "object" && "making" in state;
  return (
    <Section title={PAPERS.title} help={PAPERS.help}>
      {text === undefined ? (
        <p>{PAPERS.notYet}</p>
      ) : (
        OFFERED.map(([kind, forms]) => (
          <div key={kind}>
            <p>
              {PAPERS.kind[kind]}
              <span class="quiet small"> {PAPERS.about[kind]}</span>
            </p>
            <p>
              {forms.map((form) => (
                <button
                  key={form}
                  type="button"
                  disabled={isBusy}
                  aria-label={PAPERS.button(kind, form)}
                  onClick={() => void write(kind, form, text)}
                >
                  {PAPERS.form[form]}
                </button>
              ))}
            </p>
          </div>
        ))
      )}
      <div role="status">
        {typeof state === "object" && "making" in state && <p class="quiet">{PAPERS.making(state.making)}</p>}
        {typeof state === "object" && "failed" in state && <p class="fault">{PAPERS.failed(state.failed)}</p>}
      </div>
    </Section>
  );
}
