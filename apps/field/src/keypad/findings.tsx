import { usePlace } from "../engine/follow.ts";
import type { About } from "./fields.ts";
import { FindingLine } from "./verdict.tsx";

interface FindingsProps {
  readonly about: readonly About[];
  readonly isOpen: boolean;
  readonly hasValue: boolean;
}

/** What follows from a field: the first finding that bears on it, and others that want attention. */
export function Findings({ about, isOpen, hasValue }: FindingsProps) {
  const [first, ...others] = about;
  return (
    <>
      {first !== undefined && <Watched about={first} isShown={hasValue || isOpen} />}
      {hasValue &&
        others.map((one) => <Watched key={`${one.place} ${one.check}`} about={one} isShown={false} titled />)}
    </>
  );
}

interface WatchedProps {
  readonly about: About;
  /** Shown whatever it says; otherwise only where it wants attention. */
  readonly isShown: boolean;
  readonly titled?: boolean;
}

function Watched({ about, isShown, titled = false }: WatchedProps) {
  const finding = usePlace(about.place)?.findings.find(({ check }) => check === about.check);
  if (finding === undefined || finding.verdict === "not-applicable") return null;
  const isHeavy = finding.verdict === "not-met" || finding.verdict === "too-near";
  return isShown || isHeavy ? <FindingLine finding={finding} path={about.place} titled={titled} /> : null;
}
