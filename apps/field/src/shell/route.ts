import { useEffect, useMemo, useState } from "preact/hooks";

/** Where the app is: steps of the address after "#/", such as ["job", "J1", "observations", "o3"]. */
export type Route = readonly string[];

/** The steps of an address; undefined where it cannot be read, as one that was cut off in the middle of a letter. */
export function routeOf(hash: string): Route | undefined {
  try {
    return hash
      .replace(/^#\/?/, "")
      .split("/")
      .filter((step) => step !== "")
      .map(decodeURIComponent);
  } catch {
    return undefined;
  }
}

/** Where the app is now; undefined where the address cannot be read. */
export function useRoute(): Route | undefined {
  const [hash, setHash] = useState(location.hash);
  useEffect(() => {
    const changed = () => setHash(location.hash);
    addEventListener("hashchange", changed);
    return () => removeEventListener("hashchange", changed);
  }, []);
  return useMemo(() => routeOf(hash), [hash]);
}

/** The address of a place in the app, for links. */
export function linkTo(...steps: readonly string[]): string {
  return `#/${steps.map(encodeURIComponent).join("/")}`;
}

export function goTo(...steps: readonly string[]): void {
  location.hash = linkTo(...steps);
}
