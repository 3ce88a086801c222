import { useId } from "preact/hooks";
import type { FolderText } from "../../engine/folder-view.ts";
import { FIRM } from "../../words/firm.ts";

interface PickFolderProps {
  /** Whether there is a folder already. */
  readonly isAnother: boolean;
  readonly disabled: boolean;
  readonly onPick: (texts: Promise<readonly FolderText[]>) => void;
}

interface PicksFolders {
  readonly showDirectoryPicker: (options: { readonly id: string }) => Promise<FileSystemDirectoryHandle>;
}

/** What reads files is fetched when there are some. */
const picked = () => import("../../firm/picked.ts");

/** The ways to choose a folder of texts: a picker of folders where the browser has one, files or a ZIP archive everywhere. */
export function PickFolder({ isAnother, disabled, onPick }: PickFolderProps) {
  const id = useId();
  const words = isAnother ? FIRM.replaceFolder : FIRM.chooseFolder;
  const take = (chosen: readonly File[]) => {
    if (chosen.length > 0) onPick(picked().then(({ textsOfFiles }) => textsOfFiles(chosen)));
  };
  const pick = async () => {
    try {
      const folder = await (globalThis as unknown as PicksFolders).showDirectoryPicker({ id: "firm-topics" });
      onPick(picked().then(({ textsOfFolder }) => textsOfFolder(folder)));
    } catch {
      // Whoever closes the picker has changed their mind.
    }
  };
  return (
    <>
      {"showDirectoryPicker" in globalThis ? (
        <button type="button" disabled={disabled} onClick={() => void pick()}>
          {words}
        </button>
      ) : (
        "webkitdirectory" in HTMLInputElement.prototype && (
          <label class="button file">
            {words}
            <input
              type="file"
              ref={(input) => input?.setAttribute("webkitdirectory", "")}
              disabled={disabled}
              onChange={taken(take)}
            />
          </label>
        )
      )}
      <div>
        <label class="button file">
          {FIRM.chooseFiles}
          <input
            type="file"
            multiple
            accept=".topic,.topics,.zip"
            disabled={disabled}
            aria-describedby={id}
            onChange={taken(take)}
          />
        </label>
        <p id={id} class="quiet small">
          {FIRM.filesHelp}
        </p>
      </div>
    </>
  );
}

/** What was chosen, and the field empty again: the same can be chosen after something was put right in it. */
function taken(take: (files: readonly File[]) => void) {
  return ({ currentTarget }: { readonly currentTarget: HTMLInputElement }) => {
    take([...(currentTarget.files ?? [])]);
    currentTarget.value = "";
  };
}
