import { useEffect, useState } from "preact/hooks";

/** Where the app is: steps of the address after "#/", such as ["job", "J1", "observations", "o3"]. */
export type Route = readonly string[];

function routeNow(): Route {
  return location.hash
    .replace(/^#\/?/, "")
    .split("/")
    .filter((step) => step !== "")
    .map(decodeURIComponent);
}

export function useRoute(): Route {
  const [route, setRoute] = useState(routeNow);
  useEffect(() => {
    const changed = () => setRoute(routeNow());
    addEventListener("hashchange", changed);
    return () => removeEventListener("hashchange", changed);
  }, []);
  return route;
}

/** The address of a place in the app, for links. */
export function linkTo(...steps: readonly string[]): string {
  return `#/${steps.map(encodeURIComponent).join("/")}`;
}

export function goTo(...steps: readonly string[]): void {
  location.hash = linkTo(...steps);
}
