import { useState } from "preact/hooks";
import { engine } from "../../engine/client.ts";
import { secondNow } from "../../issued/second-now.ts";
import { PassphraseField } from "../../parts/passphrase-field.tsx";
import { PlainField } from "../../parts/plain-field.tsx";
import { ISSUE } from "../../words/issue.ts";

/** Letters of a passphrase below which guessing needs no patience. */
const FEWEST = 12;

/** Makes a key for one person on this device. */
export function NewKey({ onMade }: { readonly onMade: (text: string) => Promise<unknown> }) {
  const [person, setPerson] = useState("");
  const [device, setDevice] = useState("");
  const [passphrase, setPassphrase] = useState("");
  const [again, setAgain] = useState("");
  const [state, setState] = useState<"ready" | "making" | { readonly failed: string }>("ready");
  const short = passphrase !== "" && passphrase.length < FEWEST;
  const differ = again !== "" && again !== passphrase;
  const ready = person.trim() !== "" && device.trim() !== "" && passphrase.length >= FEWEST && passphrase === again;
  const make = async () => {
    setState("making");
    try {
      await onMade(await engine.makeKey(person.trim(), device.trim(), passphrase, secondNow()));
    } catch (error) {
      setState({ failed: error instanceof Error ? error.message : String(error) });
    }
  };
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        if (ready && state !== "making") void make();
      }}
    >
      <p>{ISSUE.none}</p>
      <PlainField label={ISSUE.person} value={person} onType={setPerson} autoComplete="name" />
      <PlainField label={ISSUE.device} value={device} onType={setDevice} />
      <PassphraseField
        label={ISSUE.newPassphrase}
        help={ISSUE.newPassphraseHelp}
        value={passphrase}
        onType={setPassphrase}
        fault={short ? ISSUE.tooShort : undefined}
        isNew
      />
      <PlainField
        label={ISSUE.again}
        type="password"
        autoComplete="new-password"
        value={again}
        onType={setAgain}
        fault={differ ? ISSUE.differ : undefined}
      />
      <button type="submit" class="main" disabled={!ready || state === "making"}>
        {ISSUE.make}
      </button>
      <div role="status">
        {state === "making" && <p>{ISSUE.making}</p>}
        {typeof state === "object" && <p class="fault">{ISSUE.keyNotKept(state.failed)}</p>}
      </div>
    </form>
  );
}
