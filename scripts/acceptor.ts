// npm run acceptor: writes packages/inspection/src/acceptor/accepted.ts, which says what plainly fits the schema.
import { writeFileSync } from "node:fs";
import { acceptorOf } from "../packages/inspection/src/acceptor/written-out.ts";
import { inspectionFile } from "../packages/inspection/src/schema/file.ts";

writeFileSync(new URL("../packages/inspection/src/acceptor/accepted.ts", import.meta.url), acceptorOf(inspectionFile));
