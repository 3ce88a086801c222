import { useId } from "preact/hooks";

interface FileButtonProps {
  readonly words: string;
  readonly help: string;
  readonly accept: string;
  readonly disabled: boolean;
  readonly onFile: (file: File) => void;
}

/** A button that asks for a file, with a line below that says what happens to it. */
export function FileButton({ words, help, accept, disabled, onFile }: FileButtonProps) {
  const id = useId();
  return (
    <div>
      <label class="button file">
        {words}
        <input
          type="file"
          accept={accept}
          disabled={disabled}
          aria-describedby={id}
          onChange={({ currentTarget }) => {
            const [file] = currentTarget.files ?? [];
            // The same file can be chosen again after something was put right in it.
            currentTarget.value = "";
            if (file !== undefined) onFile(file);
          }}
        />
      </label>
      <p id={id} class="quiet small">
        {help}
      </p>
    </div>
  );
}
