import type { ComponentChildren } from "preact";

interface NoticeProps {
  /** "alert" interrupts a screen reader, "status" waits, "note" is only read where it stands. */
  readonly kind?: "alert" | "status" | "note";
  readonly title?: string;
  readonly children?: ComponentChildren;
}

/** Something that has to be seen. */
export function Notice({ kind = "note", title, children }: NoticeProps) {
  return (
    <div class={kind === "note" ? "sheet notice" : "warning notice"} role={kind}>
      {title !== undefined && (
        <p>
          <strong>{title}</strong>
        </p>
      )}
      {children}
    </div>
  );
}
