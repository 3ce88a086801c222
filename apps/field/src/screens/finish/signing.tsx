import { standingOf } from "@good-grounds/inspection";
import { useMemo, useState } from "preact/hooks";
import { contentHashes } from "../../hand-over/content.ts";
import { fieldId } from "../../parts/field-id.ts";
import { Section } from "../../parts/section.tsx";
import { membersOf, ORDER } from "../../record/document.ts";
import { momentNow, newName, put, useJob } from "../../shell/job.ts";
import { nameOf } from "../../shell/safety.ts";
import { FINISH } from "../../words/finish.ts";
import { textAt } from "../observations/read.ts";
import { Drawn } from "./drawn.tsx";

type Capacity = "inspected-and-tested" | "authorised-for-issue";

const CAPACITIES: Readonly<Record<Capacity, string>> = {
  "inspected-and-tested": FINISH.inspected,
  "authorised-for-issue": FINISH.authorised,
};

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
  const people = membersOf(record, "people").filter((id) => nameOf(record, id) !== undefined);
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
      <div class="pair">
        <div class="field">
          <label for={fieldId("sign", "person")}>{FINISH.person}</label>
          <select
            id={fieldId("sign", "person")}
            value={person}
            onChange={({ currentTarget }) => setPerson(currentTarget.value)}
          >
            <option value="">–</option>
            {people.map((id) => (
              <option key={id} value={id}>
                {nameOf(record, id)}
              </option>
            ))}
          </select>
        </div>
        <div class="field">
          <label for={fieldId("sign", "as")}>{FINISH.capacity}</label>
          <select
            id={fieldId("sign", "as")}
            value={capacity}
            onChange={({ currentTarget }) => setCapacity(currentTarget.value as Capacity)}
          >
            {Object.entries(CAPACITIES).map(([id, words]) => (
              <option key={id} value={id}>
                {words}
              </option>
            ))}
          </select>
        </div>
      </div>
      <Drawn value={drawn} onChange={setDrawn} />
      {(!allowed || person === "") && <p class="quiet">{FINISH.cannotSign}</p>}
      <button type="button" class="main" disabled={!allowed || hash === undefined || person === ""} onClick={sign}>
        {FINISH.signNow}
      </button>
      <h3>{FINISH.signed}</h3>
      {names.length === 0 && <p class="quiet">{FINISH.none}</p>}
      <ul class="rows">
        {names.map((name) => {
          const at = `signatures/${name}`;
          const content = textAt(record, `${at}/content`);
          const stands = FINISH.standing[standingOf(content === "" ? undefined : content, hashes)];
          return (
            <li key={name} class="row between">
              <span>
                <strong>{nameOf(record, textAt(record, `${at}/person`)) ?? FINISH.unnamed}</strong>{" "}
                {CAPACITIES[textAt(record, `${at}/capacity`) as Capacity] ?? ""}
                <br />
                <span class="quiet small">
                  {textAt(record, `${at}/at`).replace("T", " ").slice(0, 16)}; {stands}
                </span>
              </span>
              <button type="button" class="plain" onClick={() => put(session, [at, null])}>
                {FINISH.withdraw}
              </button>
            </li>
          );
        })}
      </ul>
    </Section>
  );
}
