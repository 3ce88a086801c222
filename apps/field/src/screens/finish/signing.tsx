import { useMemo, useState } from "preact/hooks";
import { contentHashes } from "../../hand-over/content.ts";
import { Section } from "../../parts/section.tsx";
import { membersOf, ORDER } from "../../record/document.ts";
import { momentNow, newName, put, useJob } from "../../shell/job.ts";
import { FINISH } from "../../words/finish.ts";
import type { Capacity } from "./capacities.ts";
import { Drawn } from "./drawn.tsx";
import { Signatory } from "./signatory.tsx";
import { Signatures } from "./signatures.tsx";

/** Signing, and the signatures that stand, each with whether it still holds. */
export function Signing({ allowed }: { readonly allowed: boolean }) {
  const session = useJob();
  const { record } = session;
  const [person, setPerson] = useState(session.person);
  const [capacity, setCapacity] = useState<Capacity>("inspected-and-tested");
  const [drawn, setDrawn] = useState("");
  const size = record.size;
  const hashes = useMemo(() => contentHashes(record), [record, size]);
  const [hash] = hashes;
  const names = membersOf(record, "signatures");
  const sign = () => {
    if (hash === undefined || person === "") return;
    const at = `signatures/${newName("s")}`;
    put(
      session,
      [at, true],
      [`${at}/${ORDER}`, names.length],
      [`${at}/person`, person],
      [`${at}/capacity`, capacity],
      [`${at}/at`, momentNow()],
      [`${at}/content`, hash],
      ...(drawn === "" ? [] : [[`${at}/drawn`, drawn] as const]),
    );
    setDrawn("");
  };
  return (
    <Section title={FINISH.sign} help={FINISH.signHelp}>
      <Signatory person={person} onPerson={setPerson} capacity={capacity} onCapacity={setCapacity} />
      <Drawn value={drawn} onChange={setDrawn} />
      {(!allowed || person === "") && <p class="quiet">{FINISH.cannotSign}</p>}
      <button type="button" class="main" disabled={!allowed || hash === undefined || person === ""} onClick={sign}>
        {FINISH.signNow}
      </button>
      <h3>{FINISH.signed}</h3>
      <Signatures names={names} hashes={hashes} />
    </Section>
  );
}
