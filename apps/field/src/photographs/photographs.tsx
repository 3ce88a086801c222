import { useEffect, useState } from "preact/hooks";
import { join, membersOf } from "../record/document.ts";
import { momentNow, put, useJob } from "../shell/job.ts";
import { PHOTOGRAPHS } from "../words/photographs.ts";
import { keepPhotograph, photograph } from "./files.ts";
import { takenIn } from "./take-in.ts";

interface PhotographsProps {
  /** The place of the observation. */
  readonly observation: string;
  readonly place: string;
  /** Where one starts on the screen. */
  readonly startsHere: boolean;
}

/** The photographs of an observation, and the camera. */
export function Photographs({ observation, place, startsHere }: PhotographsProps) {
  const session = useJob();
  const list = join(observation, "photographs");
  const [trouble, setTrouble] = useState<string>();
  const [busy, setBusy] = useState(false);
  const names = membersOf(session.record, list);
  const add = async (files: FileList | null) => {
    setTrouble(undefined);
    setBusy(true);
    for (const file of files ?? [])
      try {
        const { sha256, bytes } = await takenIn(file);
        // The picture is on the device before anything speaks of it.
        await keepPhotograph(sha256, bytes);
        const short = sha256.slice(0, 16);
        const at = `photographs/${short}`;
        await session.write(
          [`${list}/${short}`, sha256],
          [at, true],
          [`${at}/sha256`, sha256],
          [`${at}/name`, file.name.slice(0, 120) || PHOTOGRAPHS.unnamed],
          [`${at}/description`, place === "" ? PHOTOGRAPHS.unnamed : place],
          [`${at}/taken`, momentNow(new Date(file.lastModified || Date.now()))],
        );
      } catch (error) {
        setTrouble((isFull(error) ? PHOTOGRAPHS.noRoom : PHOTOGRAPHS.cannot)(file.name));
      }
    setBusy(false);
  };
  return (
    <div class="field">
      <label class="button camera">
        {busy ? PHOTOGRAPHS.keeping : PHOTOGRAPHS.take}
        <input
          class="unseen"
          type="file"
          data-start={startsHere ? "" : undefined}
          accept="image/*"
          capture="environment"
          multiple
          onChange={async ({ currentTarget }) => {
            await add(currentTarget.files);
            // The same photograph can be chosen again after something went wrong.
            currentTarget.value = "";
          }}
        />
      </label>
      <p class="quiet small">{PHOTOGRAPHS.care}</p>
      <div role="status">{trouble !== undefined && <p class="fault">{trouble}</p>}</div>
      <ul class="photographs">
        {names.map((name) => (
          <li key={name}>
            <Shown sha256={String(session.record.value(join(list, name)) ?? "")} name={name} />
            <button type="button" class="plain" onClick={() => put(session, [join(list, name), null])}>
              {PHOTOGRAPHS.leaveOut}
            </button>
          </li>
        ))}
      </ul>
    </div>
  );
}

function isFull(error: unknown): boolean {
  return error instanceof Error && error.name === "QuotaExceededError";
}

/** One photograph with its description, or that it is on another device. */
function Shown({ sha256, name }: { readonly sha256: string; readonly name: string }) {
  const session = useJob();
  const [address, setAddress] = useState<string | "elsewhere">();
  const at = `photographs/${name}/description`;
  const description = session.record.value(at);
  useEffect(() => {
    let url: string | undefined;
    let left = false;
    void photograph(sha256).then((file) => {
      if (left) return;
      if (file === undefined) return setAddress("elsewhere");
      url = URL.createObjectURL(file);
      setAddress(url);
    });
    return () => {
      left = true;
      if (url !== undefined) URL.revokeObjectURL(url);
    };
  }, [sha256]);
  return (
    <>
      {address === "elsewhere" ? (
        <p class="quiet small">{PHOTOGRAPHS.elsewhere}</p>
      ) : (
        address !== undefined && (
          <img src={address} alt={typeof description === "string" ? description : ""} loading="lazy" />
        )
      )}
      <label>
        {PHOTOGRAPHS.description}
        <input
          type="text"
          maxLength={300}
          value={typeof description === "string" ? description : ""}
          onChange={({ currentTarget }) => put(session, [at, currentTarget.value.trim() || PHOTOGRAPHS.unnamed])}
        />
      </label>
    </>
  );
}
