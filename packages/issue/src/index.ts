export { openKeyFile, type PublicKey, readPublicKey } from "./keys/key-file.ts";
export { paperOf, rootFromPaper, rootKey } from "./keys/paper-root.ts";
export {
  ENDINGS,
  type Ending,
  type Register,
  type RegisteredKey,
  readRegister,
  writeRegister,
} from "./keys/register.ts";
export { StatementFault } from "./statement/lines.ts";
export { type IssueRecord, readRecord, writeRecord } from "./statement/record.ts";
export { hashOf, type Statement } from "./statement/statement.ts";
export { type Answer, answers, type Known, NOT_SHOWN, type Standing } from "./verify/answers.ts";
