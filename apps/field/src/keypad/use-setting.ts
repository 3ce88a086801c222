import { useEffect, useState } from "preact/hooks";
import { keepSetting, setting } from "../record/store.ts";

/** A word the device remembers for itself, such as where a display ends; anything else that stands there counts as none. */
export function useSetting(name: string): readonly [value: string | undefined, keep: (value: string) => void] {
  const [value, setValue] = useState<string>();
  useEffect(() => {
    let left = false;
    setValue(undefined);
    setting<unknown>(name).then(
      (found) => !left && typeof found === "string" && setValue(found),
      () => undefined,
    );
    return () => {
      left = true;
    };
  }, [name]);
  return [
    value,
    (fresh) => {
      setValue(fresh);
      keepSetting(name, fresh).catch(() => undefined);
    },
  ];
}
