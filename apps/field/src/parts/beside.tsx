import type { ComponentChildren } from "preact";
import { useWide } from "./use-wide.ts";

interface BesideProps {
  /** What the list is called. */
  readonly label: string;
  /** The list from which something was opened; on a narrow screen it is a screen of its own. */
  readonly list: () => ComponentChildren;
  readonly children: ComponentChildren;
}

/** What is open, with the list it was opened from beside it where there is room. */
export function Beside({ label, list, children }: BesideProps) {
  const wide = useWide();
  if (!wide) return <>{children}</>;
  return (
    <div class="beside">
      <nav class="beside-list" aria-label={label}>
        {list()}
      </nav>
      <div class="beside-open">{children}</div>
    </div>
  );
}
