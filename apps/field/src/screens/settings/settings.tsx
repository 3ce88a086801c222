import { useEffect, useRef, useState } from "preact/hooks";
import { Section } from "../../parts/section.tsx";
import { BackLink } from "../../shell/back-link.tsx";
import { bytes } from "../../shell/bytes.ts";
import { EarthingReminders } from "../../shell/earthing.tsx";
import { linkTo } from "../../shell/route.ts";
import { askToKeep, type Storage, useStorage } from "../../shell/storage.ts";
import { StoresNotice } from "../../shell/stores-notice.tsx";
import { UnkeptJobs } from "../../shell/unkept-jobs.tsx";
import { useStores } from "../../shell/use-stores.ts";
import { SETTINGS } from "../../words/settings.ts";
import { SHELL } from "../../words/shell.ts";
import { STORES } from "../../words/stores.ts";
import { FirmFolder } from "./firm-folder.tsx";
import { FirmRegister } from "./firm-register.tsx";
import { Light } from "./light.tsx";
import { SigningKey } from "./signing-key.tsx";

/** Light, storage and what the app is. */
export default function Settings() {
  const [asked, setAsked] = useState(0);
  const storage = useStorage(asked);
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    document.title = `${SETTINGS.title} – ${SHELL.app}`;
    heading.current?.focus();
  }, []);
  return (
    <>
      <header class="top">
        <BackLink to={linkTo("jobs")} words={SHELL.jobs} />
        <div class="job">
          <strong class="job-name">{SHELL.app}</strong>
        </div>
      </header>
      <aside class="notices" aria-label={SHELL.notices}>
        <div class="alarms">
          <EarthingReminders />
        </div>
        <UnkeptJobs />
        <StoresNotice />
      </aside>
      <main id="main" tabIndex={-1}>
        <h1 ref={heading} tabIndex={-1}>
          {SETTINGS.title}
        </h1>
        <div class="columns">
          <div>
            <Light />
            <FirmFolder />
            <Section title={SETTINGS.storage}>
              {storage !== undefined && <StorageWords storage={storage} />}
              {storage?.promised !== true && (
                <button type="button" onClick={() => void askToKeep().then(() => setAsked(asked + 1))}>
                  {SETTINGS.ask}
                </button>
              )}
            </Section>
          </div>
          <div>
            <SigningKey />
            <FirmRegister />
            <Section title={SETTINGS.offline}>
              <p>{navigator.serviceWorker?.controller == null ? SETTINGS.notReady : SETTINGS.ready}</p>
            </Section>
            <Section title={SETTINGS.about}>
              <p>{SETTINGS.aid}</p>
              <p>{SETTINGS.prevails}</p>
              <p>{SETTINGS.private}</p>
              <p>
                <a class="button" href="licences.txt" target="_blank" rel="noopener">
                  {SETTINGS.licences}
                </a>
              </p>
            </Section>
          </div>
        </div>
      </main>
    </>
  );
}

function StorageWords({ storage: { promised, usedBytes, leftBytes } }: { readonly storage: Storage }) {
  const { files } = useStores();
  return (
    <>
      {typeof files === "string" && <p>{files === "absent" ? STORES.one : STORES.two}</p>}
      <p role="status">
        {promised === true ? SETTINGS.promised : promised === false ? SETTINGS.notPromised : SETTINGS.unknown}
      </p>
      <p>
        {usedBytes === undefined || leftBytes === undefined
          ? SETTINGS.roomUnknown
          : SETTINGS.room(bytes(usedBytes), bytes(leftBytes))}
      </p>
    </>
  );
}
