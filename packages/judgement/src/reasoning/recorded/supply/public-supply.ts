import { ofSupply } from "../of-things.ts";
import { stated } from "../property.ts";

/** Whether a public network supplies the installation. */
export const publicSupply = stated("public-supply", "supply from the public network", (spoken) =>
  ofSupply(spoken, (supply) => supply.public),
);
