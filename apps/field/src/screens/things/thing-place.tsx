import { useRecord } from "../../keypad/use-record.ts";
import { THINGS } from "../../words/things.ts";
import { Whereabouts } from "../observations/whereabouts.tsx";
import { PickThing } from "./pick-thing.tsx";
import { type RecordedThing, thingName, thingsIn } from "./recorded.ts";

/** Where a thing is: at a board, at one of its circuits, in a place that is recorded. */
export function ThingPlace({ thing }: { readonly thing: RecordedThing }) {
  const record = useRecord();
  const places = thingsIn(record).filter(({ kind, path }) => kind === "places" && path !== thing.path);
  return (
    <>
      <Whereabouts observation={thing.path} />
      <PickThing
        path={`${thing.path}/place`}
        label={THINGS.place}
        none={THINGS.noPlace}
        options={places.map((place) => [place.name, thingName(record, place)] as const)}
      />
    </>
  );
}
