/** Before all tests: random examples are the same at every run. `npm run nightly` gives another seed. */
import fc from "fast-check";
import { seedOfRun } from "./seed.ts";

fc.configureGlobal({ seed: seedOfRun() });
