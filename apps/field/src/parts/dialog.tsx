import type { ComponentChildren } from "preact";
import { useEffect, useId, useRef } from "preact/hooks";

interface DialogProps {
  readonly title: string;
  /** Called when it is left without a choice. */
  readonly onClose: () => void;
  /** A dialog that must be answered does not go away by Escape. */
  readonly mustAnswer?: boolean;
  readonly children: ComponentChildren;
}

/** A question over the screen. It is open as long as it is drawn; the focus goes back to where it was. */
export function Dialog({ title, onClose, mustAnswer = false, children }: DialogProps) {
  const dialog = useRef<HTMLDialogElement>(null);
  const id = useId();
  useEffect(() => {
    const before = document.activeElement;
    dialog.current?.showModal();
    return () => {
      if (before instanceof HTMLElement && before.isConnected) before.focus();
    };
  }, []);
  return (
    <dialog
      ref={dialog}
      closedby={mustAnswer ? "none" : undefined}
      aria-labelledby={id}
      onCancel={(event) => {
        event.preventDefault();
        if (!mustAnswer) onClose();
      }}
      // A browser that does not know "closedby" closes at a second Escape whatever the first was answered with.
      onClose={() => (mustAnswer ? dialog.current?.showModal() : onClose())}
    >
      <h2 id={id} tabIndex={-1} autofocus>
        {title}
      </h2>
      {children}
    </dialog>
  );
}
