import { Inflate } from "fflate";
import { crc32 } from "./crc32.ts";
import { Refused } from "./refused.ts";

/** A file in a ZIP archive, as the directory at the archive's end states it. */
export interface Member {
  readonly name: string;
  readonly isStored: boolean;
  /** Bytes in the archive, and what they claim to unpack to. */
  readonly packed: number;
  readonly unpacked: number;
  readonly crc: number;
  /** Where its own header starts. */
  readonly at: number;
}

const END = { signature: 0x06054b50, length: 22 };
const ENTRY = { signature: 0x02014b50, length: 46 };
const HEADER = { signature: 0x04034b50, length: 30 };
const LONGEST_COMMENT = 0xffff;

/** No stream of this kind unpacks to more than so many times its size. */
const GREATEST_RATIO = 1032;

/** So many packed bytes are unpacked at once: what comes of them at most still fits in a phone's memory. */
const STEP = 16 * 1024;

/** The members of an archive, read from its directory alone; refused where there is none that can be followed. */
export async function membersOf(archive: Blob): Promise<readonly Member[]> {
  const from = Math.max(0, archive.size - END.length - LONGEST_COMMENT);
  const tail = viewOf(await archive.slice(from).arrayBuffer());
  const end = endIn(tail);
  if (end === undefined) throw new Refused("no-copy");
  const [count, length, start] = [
    tail.getUint16(end + 10, true),
    tail.getUint32(end + 12, true),
    tail.getUint32(end + 16, true),
  ];
  if (start + length > archive.size) throw new Refused("damaged");
  const directory = viewOf(await archive.slice(start, start + length).arrayBuffer());
  const members: Member[] = [];
  let at = 0;
  for (let i = 0; i < count; i++) {
    if (at + ENTRY.length > length || directory.getUint32(at, true) !== ENTRY.signature) throw new Refused("damaged");
    const [method, crc] = [directory.getUint16(at + 10, true), directory.getUint32(at + 16, true)];
    const [packed, unpacked] = [directory.getUint32(at + 20, true), directory.getUint32(at + 24, true)];
    const after = at + ENTRY.length + directory.getUint16(at + 28, true);
    if (after > length) throw new Refused("damaged");
    const name = new TextDecoder().decode(
      new Uint8Array(directory.buffer, at + ENTRY.length, after - at - ENTRY.length),
    );
    if (method === 0 || method === 8)
      members.push({ name, isStored: method === 0, packed, unpacked, crc, at: directory.getUint32(at + 42, true) });
    at = after + directory.getUint16(at + 30, true) + directory.getUint16(at + 32, true);
  }
  // Of two members of one name nobody could say which is meant.
  if (new Set(members.map(({ name }) => name)).size !== members.length) throw new Refused("damaged");
  return members;
}

/** The bytes of a member as they lie in the archive, without reading them. */
export async function packedOf(archive: Blob, { at, packed }: Member): Promise<Blob> {
  const header = viewOf(await archive.slice(at, at + HEADER.length).arrayBuffer());
  if (header.byteLength < HEADER.length || header.getUint32(0, true) !== HEADER.signature) throw new Refused("damaged");
  const start = at + HEADER.length + header.getUint16(26, true) + header.getUint16(28, true);
  if (start + packed > archive.size) throw new Refused("damaged");
  return archive.slice(start, start + packed);
}

/** The unpacked bytes of a member: as many as it claims and with its checksum, or refused. */
export async function bytesOf(archive: Blob, member: Member, moved: (bytes: number) => void): Promise<Uint8Array> {
  const bytes = member.isStored
    ? new Uint8Array(await (await packedOf(archive, member)).arrayBuffer())
    : await inflated(await packedOf(archive, member), member, moved);
  if (bytes.length !== member.unpacked || crc32(bytes) !== member.crc) throw new Refused("damaged");
  return bytes;
}

async function inflated(packed: Blob, { unpacked }: Member, moved: (bytes: number) => void): Promise<Uint8Array> {
  if (unpacked > packed.size * GREATEST_RATIO) throw new Refused("damaged");
  const chunks: Uint8Array[] = [];
  let length = 0;
  const stream = new Inflate((chunk) => {
    length += chunk.length;
    // Never more than was claimed, and counted against what there is room for.
    if (length > unpacked) throw new Refused("damaged");
    chunks.push(chunk);
  });
  const bytes = new Uint8Array(await packed.arrayBuffer());
  for (let at = 0; at < bytes.length; at += STEP) {
    try {
      stream.push(bytes.subarray(at, at + STEP), at + STEP >= bytes.length);
    } catch (error) {
      // Whatever the stream stumbles over, the archive is not as it was written.
      throw error instanceof Refused ? error : new Refused("damaged");
    }
    moved(length);
  }
  const whole = new Uint8Array(length);
  let at = 0;
  for (const chunk of chunks) {
    whole.set(chunk, at);
    at += chunk.length;
  }
  return whole;
}

function endIn(tail: DataView): number | undefined {
  for (let at = tail.byteLength - END.length; at >= 0; at--)
    if (
      tail.getUint32(at, true) === END.signature &&
      at + END.length + tail.getUint16(at + 20, true) === tail.byteLength
    )
      return at;
  return undefined;
}

function viewOf(buffer: ArrayBuffer): DataView {
  return new DataView(buffer);
}
