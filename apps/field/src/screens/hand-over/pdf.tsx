import { useState } from "preact/hooks";
import { engine } from "../../engine/client.ts";
import { save } from "../../hand-over/save.ts";
import { HAND_OVER } from "../../words/finish.ts";

interface PdfProps {
  readonly name: string;
  /** The inspection file as text. */
  readonly text: string;
}

/** The condition report written on the device. */
export function Pdf({ name, text }: PdfProps) {
  const [state, setState] = useState<"ready" | "writing" | { readonly failed: string }>("ready");
  const write = async () => {
    setState("writing");
    try {
      await save(`${name}.pdf`, "application/pdf", await engine.report(text));
      setState("ready");
    } catch (error) {
      setState({ failed: error instanceof Error ? error.message : String(error) });
    }
  };
  return (
    <>
      <p>
        <button type="button" class="main" disabled={state === "writing"} onClick={() => void write()}>
          {state === "writing" ? HAND_OVER.writing : state === "ready" ? HAND_OVER.pdf : HAND_OVER.pdfAgain}
        </button>
      </p>
      <p class="quiet small">{HAND_OVER.pdfHelp}</p>
      <div role="status">{typeof state === "object" && <p class="fault">{HAND_OVER.pdfFailed(state.failed)}</p>}</div>
    </>
  );
}
