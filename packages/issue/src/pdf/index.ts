export { newKey, newRoot } from "../keys/new-key.ts";
export { readGiven } from "./given.ts";
export { type About, type IssuedDocument, issueDocument } from "./issue.ts";
export { type Issued, readIssued } from "./issued.ts";
export {
  certificateHash,
  RECORD_NAME,
  type Signer,
  sealPdf,
  signerOf,
  signerOfP12,
  timeAuthorityAt,
} from "./seal.ts";
