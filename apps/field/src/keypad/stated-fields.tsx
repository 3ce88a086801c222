import { UNIT_SYMBOL } from "@good-grounds/core";
import type { Field, FieldSet } from "@good-grounds/inspection";
import { KEYPAD } from "../words/keypad.ts";
import type { Spot } from "./spot.ts";
import { StatedCount } from "./stated-count.tsx";
import { StatedQuantity } from "./stated-quantity.tsx";
import { StatedWord, YES_NO } from "./stated-word.tsx";
import { StatedWords } from "./stated-words.tsx";

const YES = { yes: KEYPAD.yes, no: KEYPAD.no };

interface StatedFieldsProps {
  readonly fields: FieldSet;
  /** The place of what they belong to. */
  readonly path: string;
}

/** Every field of a place that is stated, each as its description says; readings are taken by the keypad elsewhere. */
export function StatedFields({ fields, path }: StatedFieldsProps) {
  return (
    <>
      {Object.entries(fields).map(([name, field]) => (
        <StatedField key={name} field={field} spot={{ path: `${path}/${name}` }} />
      ))}
    </>
  );
}

function StatedField({ field, spot }: { readonly field: Field; readonly spot: Spot }) {
  const { kind, label, help, words = {}, about, symbol } = field;
  switch (kind) {
    case "word":
      return <StatedWord spot={spot} label={label} options={words} />;
    case "words":
      return <StatedWords spot={spot} label={label} help={help} options={words} />;
    case "yes-no":
      return <StatedWord spot={spot} label={label} options={YES} written={YES_NO} />;
    case "count":
      return <StatedCount spot={spot} label={label} />;
    case "quantity": {
      const unit = "unit" in about ? about.unit : "ratio";
      return (
        <StatedQuantity
          spot={spot}
          label={label}
          unit={unit}
          symbol={symbol ?? UNIT_SYMBOL[unit]}
          {...(help === undefined ? {} : { help })}
        />
      );
    }
    case "reading":
    case "points":
      return null;
  }
}
