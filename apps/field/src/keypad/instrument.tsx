import { membersOf } from "../record/document.ts";
import type { Record as JobRecord } from "../record/record.ts";
import { useSession } from "../shell/job.ts";
import { linkTo } from "../shell/route.ts";
import { KEYPAD } from "../words/keypad.ts";
import { useRecord } from "./use-record.ts";
import { useSetting } from "./use-setting.ts";

/** What an instrument is called: its kind and serial number. */
export function instrumentName(record: JobRecord, id: string | undefined): string | undefined {
  if (id === undefined) return undefined;
  const parts = ["kind", "serial"].map((name) => record.value(`instruments/${id}/${name}`));
  const words = parts.filter((part) => typeof part === "string").join(", ");
  return words === "" ? undefined : words;
}

/** The instrument readings are taken with from now on; the only one, where there is only one. */
export function useInHand(): readonly [id: string | undefined, take: (id: string) => void] {
  const { job } = useSession();
  const record = useRecord();
  const [chosen, choose] = useSetting(`instrument ${job}`);
  const all = membersOf(record, "instruments");
  const inHand = chosen !== undefined && all.includes(chosen) ? chosen : all.length === 1 ? all[0] : undefined;
  return [inHand, choose];
}

interface InHandProps {
  readonly inHand: string | undefined;
  readonly take: (id: string) => void;
}

/** Which instrument is in hand. */
export function InHand({ inHand, take }: InHandProps) {
  const { job } = useSession();
  const record = useRecord();
  const all = membersOf(record, "instruments");
  if (all.length === 0)
    return (
      <p class="small quiet">
        {KEYPAD.instrument}: {KEYPAD.instrumentNone}. <a href={linkTo("job", job, "people")}>{KEYPAD.addInstrument}</a>
      </p>
    );
  if (all.length === 1)
    return (
      <p class="small quiet">
        {KEYPAD.instrument}: {instrumentName(record, all[0]) ?? KEYPAD.instrumentNone}
      </p>
    );
  return (
    <div class="in-hand">
      <label for="in-hand" class="small">
        {KEYPAD.instrument}
      </label>
      <select id="in-hand" value={inHand ?? ""} onChange={({ currentTarget }) => take(currentTarget.value)}>
        <option value="">{KEYPAD.instrumentNone}</option>
        {all.map((id) => (
          <option key={id} value={id}>
            {instrumentName(record, id) ?? KEYPAD.instrumentUnnamed}
          </option>
        ))}
      </select>
    </div>
  );
}
