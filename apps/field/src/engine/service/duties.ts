import { misfitsOf } from "@good-grounds/assembly";
import { resolveDraft } from "@good-grounds/inspection";
import { dutiesOf, outcomeOf, reasonObservations, weigh } from "@good-grounds/judgement";
import { DUTY, dutyCalendar, dutyLine, dutyWords, passOnWords } from "@good-grounds/report";
import type { Topics } from "@good-grounds/topics";
import { ENGINE } from "../../words/engine.ts";
import { draftOf } from "../draft.ts";
import type { DutiesView } from "../duties-view.ts";
import type { Data } from "../protocol.ts";

/** What the law asks because of a job as far as it goes. */
export function dutiesOfData(data: Data, topics?: Topics): DutiesView {
  const draft = draftOf(data);
  if (draft === undefined) throw new Error(ENGINE.unreadable);
  const installation = resolveDraft(draft);
  const weighing = weigh(installation);
  const duties = dutiesOf(
    installation,
    outcomeOf(
      installation,
      weighing,
      reasonObservations(installation, weighing, topics),
      misfitsOf(installation, weighing),
      topics,
    ),
  );
  const { id = "", address, inspectedOn } = installation;
  const calendar =
    inspectedOn === undefined || id === ""
      ? undefined
      : dutyCalendar({ id, address: address.join(", "), issued: lastSigned(draft.file) ?? inspectedOn, duties });
  return {
    notAdvice: DUTY.notAdvice,
    remark: duties.length === 0 ? DUTY.nothing : passOnWords(installation),
    duties: duties.map((duty) => {
      const { asks, grounds } = dutyWords(duty);
      return { id: duty.id, line: dutyLine(duty), asks, grounds };
    }),
    ...(calendar === undefined ? {} : { calendar }),
  };
}

/** When somebody signed last, whatever for. */
function lastSigned({ signatures = [] }: NonNullable<ReturnType<typeof draftOf>>["file"]): string | undefined {
  return signatures
    .map(({ at }) => at)
    .sort((a, b) => Date.parse(a) - Date.parse(b))
    .at(-1);
}
