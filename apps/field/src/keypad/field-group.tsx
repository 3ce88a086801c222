import type { ComponentChildren } from "preact";
import { LiveGate } from "../parts/live-gate.tsx";
import type { FieldGroup as GroupOfFields } from "./fields.ts";

interface FieldGroupProps {
  readonly group: GroupOfFields;
  readonly children: ComponentChildren;
}

/** Fields under their heading; those of live tests behind their gate. */
export function FieldGroup({ group, children }: FieldGroupProps) {
  const { title, help, liveOf, folded } = group;
  const inside =
    liveOf === undefined ? (
      children
    ) : (
      <div class="live-gate">
        <LiveGate circuit={liveOf}>{children}</LiveGate>
      </div>
    );
  if (folded === true)
    return (
      <details>
        <summary>{title}</summary>
        {inside}
      </details>
    );
  return (
    <section aria-label={title}>
      <h3>{title}</h3>
      {help !== undefined && <p class="quiet small">{help}</p>}
      {inside}
    </section>
  );
}
