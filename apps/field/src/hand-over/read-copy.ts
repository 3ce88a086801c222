import { bytesOf, type Member, membersOf, packedOf } from "./archive.ts";
import { type Copy, type Moved, PHOTOGRAPH, photographName, RECORD } from "./copy.ts";
import { hashOf } from "./hash.ts";
import { LARGEST, LARGEST_PHOTOGRAPH, LARGEST_RECORD } from "./limits.ts";
import { contentsIn, type Proved } from "./record-text.ts";
import { Refused } from "./refused.ts";

/** The record in an archive of before, which had no hash over it. */
const OLDER_RECORD = "job.json";

/** Reads a copy, one member after the other; throws {@link Refused} where the file is none or not what was written. */
export async function readCopy(file: Blob, moved: Moved = () => undefined): Promise<Copy> {
  if (file.size > LARGEST) throw new Refused("too-large");
  const [first] = new Uint8Array(await file.slice(0, 1).arrayBuffer());
  if (first === "{".charCodeAt(0)) {
    // The record alone, as the app hands it out when nothing else works any more.
    if (file.size > LARGEST_RECORD) throw new Refused("too-large");
    const { job, entries, proved, photographs } = await contentsIn(await file.text());
    return { job, entries, proved, photographs: new Map(), damaged: photographs.length };
  }
  const members = (await membersOf(file)).filter(
    ({ name }) => name === RECORD || name === OLDER_RECORD || PHOTOGRAPH.test(name),
  );
  const of = room(members);
  const record = members.find(({ name }) => name === RECORD) ?? members.find(({ name }) => name === OLDER_RECORD);
  if (record === undefined) throw new Refused("no-copy");
  const bytes = await bytesOf(file, record, (done) => moved(done, of));
  const contents = await contentsIn(textIn(bytes));
  // A record with a hash under the name of one without, or the other way round, was never written.
  if (contents.proved !== (record.name === RECORD)) throw new Refused("damaged");
  return withPhotographs(file, members, contents, (done) => moved(record.unpacked + done, of));
}

/** What the members claim to unpack to, in bytes, counted first: a small file can claim to hold gigabytes. */
function room(members: readonly Member[]): number {
  let sum = 0;
  for (const { name, unpacked } of members) {
    sum += unpacked;
    if (sum > LARGEST || unpacked > (PHOTOGRAPH.test(name) ? LARGEST_PHOTOGRAPH : LARGEST_RECORD))
      throw new Refused("too-large");
  }
  return sum;
}

async function withPhotographs(
  file: Blob,
  members: readonly Member[],
  { job, entries, proved, photographs }: Proved,
  moved: (done: number) => void,
): Promise<Copy> {
  const byName = new Map(members.map((member) => [member.name, member]));
  const names = proved
    ? photographs.map(({ sha256 }) => photographName(sha256))
    : [...byName.keys()].filter((name) => PHOTOGRAPH.test(name));
  const sound = new Map<string, Blob>();
  let done = 0;
  let damaged = 0;
  for (const name of names) {
    const member = byName.get(name);
    const sha256 = PHOTOGRAPH.exec(name)?.[1];
    const bytes =
      member === undefined || sha256 === undefined ? undefined : await soundPhotograph(file, member, sha256);
    if (bytes === undefined || sha256 === undefined) damaged += 1;
    else sound.set(sha256, bytes);
    done += member?.unpacked ?? 0;
    moved(done);
  }
  return { job, entries, proved, photographs: sound, damaged };
}

/** A photograph whose bytes are what its hash says; where it is not packed it stays in the file until it is kept. */
async function soundPhotograph(file: Blob, member: Member, sha256: string): Promise<Blob | undefined> {
  try {
    const bytes = await bytesOf(file, member, () => undefined);
    if ((await hashOf(bytes)) !== sha256) return undefined;
    const whole = member.isStored ? await packedOf(file, member) : new Blob([bytes as BlobPart]);
    return whole.slice(0, whole.size, "image/jpeg");
  } catch (error) {
    if (error instanceof Refused) return undefined;
    throw error;
  }
}

function textIn(bytes: Uint8Array): string {
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    throw new Refused("damaged");
  }
}
