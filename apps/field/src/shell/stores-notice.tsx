import { Notice } from "../parts/notice.tsx";
import { haveReadShort, type Stores } from "../record/stores.ts";
import { STORES } from "../words/stores.ts";
import { useStores } from "./use-stores.ts";

/** Says which of the two stores does not work, and once what one of them lacked and has back from the other. */
export function StoresNotice() {
  const { database, files, found } = useStores();
  const trouble = troubleOf({ database, files });
  return (
    <>
      {trouble !== undefined && (
        <Notice kind="alert" title={STORES.oneOnly}>
          <p>{trouble}</p>
          <p>{STORES.takeAway}</p>
        </Notice>
      )}
      {found !== undefined && (
        <Notice kind="alert" title={found.nowhere > 0 ? STORES.lost : STORES.foundShort}>
          {found.fromFiles > 0 && <p>{STORES.fromFiles(found.fromFiles, found.jobs.length)}</p>}
          {found.fromDatabase > 0 && <p>{STORES.fromDatabase(found.fromDatabase, found.jobs.length)}</p>}
          {found.damagedBytes > 0 && <p>{STORES.damaged(found.damagedBytes)}</p>}
          <p>{found.nowhere > 0 ? STORES.nowhere(found.nowhere) : STORES.nothingLost}</p>
          <p>{STORES.takeAway}</p>
          <button type="button" onClick={() => void haveReadShort()}>
            {STORES.read}
          </button>
        </Notice>
      )}
    </>
  );
}

/** Which of the stores fails, and why; undefined where neither does. */
function troubleOf({ database, files }: Pick<Stores, "database" | "files">): string | undefined {
  if (typeof database !== "string") return STORES.databaseFails(database.trouble);
  if (typeof files !== "string") return STORES.filesFail(files.trouble);
  return undefined;
}
