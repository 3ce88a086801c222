import type { ScreenProps } from "../../shell/screens.ts";
import { AtWork } from "./at-work.tsx";
import { Instruments } from "./instruments.tsx";
import { Persons } from "./persons.tsx";
import { Visits } from "./visits.tsx";

/** Who inspects, with what, on which days. */
export default function People(_: ScreenProps) {
  return (
    <div class="columns">
      <div>
        <AtWork />
        <Persons />
      </div>
      <div>
        <Instruments />
        <Visits />
      </div>
    </div>
  );
}
