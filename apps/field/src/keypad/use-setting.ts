import { useEffect, useState } from "preact/hooks";
import { keepSetting, setting } from "../record/store.ts";

/** Something the device remembers for itself, such as where a display ends. */
export function useSetting<T>(name: string): readonly [value: T | undefined, keep: (value: T) => void] {
  const [value, setValue] = useState<T>();
  useEffect(() => {
    let left = false;
    setValue(undefined);
    setting<T>(name).then(
      (found) => !left && setValue(found),
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
