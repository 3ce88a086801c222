import { ofBrief } from "../file-leaves.ts";
import { stated } from "../property.ts";

/** Whether it is a home that somebody rents. Tenure "other" leaves it open. */
export const letDwelling = stated("let-dwelling", "a home that is let", (spoken) =>
  ofBrief(spoken, "tenure", "a home that is let", ({ use, tenure }) => {
    const isHome = use === undefined ? undefined : use === "dwelling" || use === "house-in-multiple-occupation";
    if (isHome === false) return false;
    if (tenure === undefined || tenure === "other") return undefined;
    const isLet = tenure === "private-rented" || tenure === "social-rented";
    return isLet ? isHome : false;
  }),
);
