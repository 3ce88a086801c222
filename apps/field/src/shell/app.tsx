import { useRoute } from "./route.ts";

/** The whole app: the list of jobs, or one job with its screens. */
export function App() {
  const route = useRoute();
  return (
    <main>
      <h1>Good Grounds</h1>
      <p>{route.join(" / ")}</p>
    </main>
  );
}
