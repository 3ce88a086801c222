import { useEffect, useState } from "preact/hooks";
import { listenToStores, type Stores, stores } from "../record/stores.ts";

/** How the two stores of this device stand; the component is drawn again when that changes. */
export function useStores(): Stores {
  const [now, setNow] = useState(stores);
  useEffect(() => {
    setNow(stores());
    return listenToStores(() => setNow(stores()));
  }, []);
  return now;
}
