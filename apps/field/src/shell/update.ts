import { useEffect, useState } from "preact/hooks";
import { flushDrafts } from "../parts/drafts.ts";
import { arrived } from "./job.ts";

/**
 * Registers the service worker. Where a newer version of the app lies ready, gives the way to change over: what is being
 * typed is written first, and the page comes back at the same field.
 */
export function useUpdate(): (() => Promise<void>) | undefined {
  const [waiting, setWaiting] = useState<ServiceWorker>();
  useEffect(() => {
    const workers = navigator.serviceWorker as ServiceWorkerContainer | undefined;
    if (workers === undefined || location.protocol === "file:") return;
    const offer = (worker: ServiceWorker | null) => {
      // Without a controller this is the first visit and nothing is replaced.
      if (worker !== null && workers.controller !== null) setWaiting(worker);
    };
    let timer: ReturnType<typeof setInterval> | undefined;
    workers.register("service-worker.js").then(
      (registration) => {
        offer(registration.waiting);
        registration.addEventListener("updatefound", () => {
          const coming = registration.installing;
          coming?.addEventListener("statechange", () => coming.state === "installed" && offer(coming));
        });
        timer = setInterval(() => void registration.update().catch(() => undefined), 3_600_000);
      },
      () => undefined,
    );
    return () => clearInterval(timer);
  }, []);
  if (waiting === undefined) return undefined;
  return async () => {
    flushDrafts();
    // A change still on its way would be cut off by the new start. Where one cannot be kept, the browser asks first.
    await arrived();
    navigator.serviceWorker.addEventListener("controllerchange", () => location.reload(), { once: true });
    waiting.postMessage("take over");
  };
}
