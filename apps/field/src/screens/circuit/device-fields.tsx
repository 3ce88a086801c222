import { DEVICE_STANDARDS, DEVICE_TYPES } from "@good-grounds/core";
import { StatedQuantity } from "../../keypad/stated-quantity.tsx";
import { StatedWord } from "../../keypad/stated-word.tsx";
import { CIRCUIT } from "../../words/installation.ts";

interface DeviceFieldsProps {
  /** The place of the device, which is one value. */
  readonly path: string;
  readonly usual: readonly string[];
  readonly usualBreaking: readonly string[];
  readonly withEnergy?: boolean;
}

export const asThemselves = (words: readonly string[]): Readonly<Record<string, string>> =>
  Object.fromEntries(words.map((word) => [word, word]));

const STANDARDS = asThemselves(DEVICE_STANDARDS);
const TYPES = asThemselves(DEVICE_TYPES);
const ENERGY = asThemselves(["1", "2", "3"]);

/** An overcurrent protective device as marked. */
export function DeviceFields({ path, usual, usualBreaking, withEnergy = false }: DeviceFieldsProps) {
  const at = (name: string) => ({ path, inner: [name] });
  return (
    <>
      <StatedWord spot={at("standard")} label={CIRCUIT.standard} options={STANDARDS} />
      <StatedWord spot={at("type")} label={CIRCUIT.type} options={TYPES} />
      <StatedQuantity spot={at("rated")} label={CIRCUIT.rated} unit="ampere" symbol="A" usual={usual} />
      <StatedQuantity
        spot={at("breakingCapacity")}
        label={CIRCUIT.breaking}
        unit="ampere"
        symbol="kA"
        usual={usualBreaking}
      />
      {withEnergy && (
        <StatedWord
          spot={at("energyClass")}
          label={CIRCUIT.energy}
          options={ENERGY}
          written={Number}
          isStated={false}
        />
      )}
    </>
  );
}
