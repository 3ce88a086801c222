import { Component, type ComponentType } from "preact";

/**
 * A component that is drawn again only when what it shows is different: functions among its properties are taken to do
 * the same at any time, and plain objects are compared by what is in them.
 */
export function memo<P extends object>(View: ComponentType<P>): ComponentType<P> {
  return class Memo extends Component<P> {
    override shouldComponentUpdate(next: P): boolean {
      const now = this.props as P;
      return (Object.keys(next) as (keyof P)[]).some((name) => isDifferent(now[name], next[name]));
    }

    override render(props: P) {
      return <View {...props} />;
    }
  };
}

function isDifferent(a: unknown, b: unknown): boolean {
  if (a === b || (typeof a === "function" && typeof b === "function")) return false;
  if (typeof a !== "object" || typeof b !== "object") return true;
  return JSON.stringify(a) !== JSON.stringify(b);
}
