import { useText } from "../../shell/job.ts";
import type { ScreenProps } from "../../shell/screens.ts";

/** What was ordered, for which premises, by whom and why. */
export default function Brief(_: ScreenProps) {
  const [purpose, write] = useText("brief/purpose");
  return (
    <label>
      Purpose
      <input value={purpose} onChange={(event) => void write(event.currentTarget.value)} />
    </label>
  );
}
