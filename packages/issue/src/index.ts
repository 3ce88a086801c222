export { openKeyFile, type PublicKey, readPublicKey, type Secrets, writePublicKey } from "./keys/key-file.ts";
export { paperOf, rootFromPaper, rootKey } from "./keys/paper-root.ts";
export {
  ENDINGS,
  type Ending,
  type Register,
  type RegisteredKey,
  readRegister,
  writeRegister,
} from "./keys/register.ts";
export { standsIn } from "./keys/stands-in.ts";
export { aboutInspection } from "./statement/about-inspection.ts";
export { fileNameOf, issueName } from "./statement/issue-name.ts";
export { StatementFault } from "./statement/lines.ts";
export { newestOf } from "./statement/newest.ts";
export { type IssueRecord, readRecord, writeRecord } from "./statement/record.ts";
export { hashOf, type Layout, type Statement } from "./statement/statement.ts";
export { type Answer, answers, type Known, NOT_SHOWN, QUESTION, type Standing } from "./verify/answers.ts";
export { type Beside, type Given, type Verified, verifiedOf } from "./verify/verified.ts";
export { type Maker, whyNotAgain } from "./verify/why-not-again.ts";
