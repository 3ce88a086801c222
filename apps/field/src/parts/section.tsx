import type { ComponentChildren } from "preact";
import { useId } from "preact/hooks";

interface SectionProps {
  readonly title: string;
  readonly help?: ComponentChildren;
  readonly children: ComponentChildren;
}

/** A part of a screen with its heading. */
export function Section({ title, help, children }: SectionProps) {
  const id = useId();
  return (
    <section aria-labelledby={id}>
      <h2 id={id}>{title}</h2>
      {help !== undefined && <p class="quiet">{help}</p>}
      {children}
    </section>
  );
}
