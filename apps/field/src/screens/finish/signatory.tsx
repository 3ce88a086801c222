import { fieldId } from "../../parts/field-id.ts";
import { membersOf } from "../../record/document.ts";
import { useSession } from "../../shell/job.ts";
import { nameOf } from "../../shell/safety.ts";
import { FINISH } from "../../words/finish.ts";
import { CAPACITIES, type Capacity } from "./capacities.ts";

interface SignatoryProps {
  /** Empty where nobody is chosen. */
  readonly person: string;
  readonly onPerson: (person: string) => void;
  readonly capacity: Capacity;
  readonly onCapacity: (capacity: Capacity) => void;
}

/** Who signs, and as what. */
export function Signatory({ person, onPerson, capacity, onCapacity }: SignatoryProps) {
  const { record } = useSession();
  const people = membersOf(record, "people").filter((id) => nameOf(record, id) !== undefined);
  return (
    <div class="pair">
      <div class="field">
        <label for={fieldId("sign", "person")}>{FINISH.person}</label>
        <select
          id={fieldId("sign", "person")}
          value={person}
          onChange={({ currentTarget }) => onPerson(currentTarget.value)}
        >
          <option value="">–</option>
          {people.map((id) => (
            <option key={id} value={id}>
              {nameOf(record, id)}
            </option>
          ))}
        </select>
      </div>
      <div class="field">
        <label for={fieldId("sign", "as")}>{FINISH.capacity}</label>
        <select
          id={fieldId("sign", "as")}
          value={capacity}
          onChange={({ currentTarget }) => onCapacity(currentTarget.value as Capacity)}
        >
          {Object.entries(CAPACITIES).map(([id, words]) => (
            <option key={id} value={id}>
              {words}
            </option>
          ))}
        </select>
      </div>
    </div>
  );
}
