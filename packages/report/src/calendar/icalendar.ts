/** A day or a moment in a calendar, with what is to be done by then. */
export interface CalendarEvent {
  /** The same for the same thing in every later file, so that a calendar replaces it. */
  readonly uid: string;
  /** Whole day, "2026-12-07", or a moment with its offset. */
  readonly at: string;
  readonly summary: string;
  readonly description: string;
  readonly location: string;
  /** Whether it is only possible. */
  readonly tentative: boolean;
  /** Durations before the start at which to be reminded: "P7D". */
  readonly alarms: readonly string[];
}

const MEANT = /[\\;,]/g;

/** A text value: what has a meaning in the format is escaped, line breaks are written as such. */
function textValue(text: string): string {
  return text.replace(MEANT, "\\$&").replace(/\r\n|\r|\n/g, "\\n");
}

/** Octets of a line before it is folded, its end not counted. */
const LONGEST = 75;

/** Octets of a character in UTF-8. */
function octetsOf(point: number): number {
  return point < 0x80 ? 1 : point < 0x8_00 ? 2 : point < 0x1_00_00 ? 3 : 4;
}

/** Folds a line after at most 75 octets, never within a character. */
function folded(line: string): string {
  const parts: string[] = [];
  let part = "";
  let octets = 0;
  for (const sign of line) {
    const size = octetsOf(sign.codePointAt(0) ?? 0);
    if (octets + size > LONGEST) {
      parts.push(part);
      // The space that marks what goes on is an octet of the line.
      part = " ";
      octets = 1;
    }
    part += sign;
    octets += size;
  }
  return [...parts, part].map((one) => `${one}\r\n`).join("");
}

/** A moment as UTC in the short form of the format. */
function utc(moment: string): string {
  return `${new Date(moment).toISOString().slice(0, 19).replace(/[-:]/g, "")}Z`;
}

function start(at: string): string {
  return at.includes("T") ? `DTSTART:${utc(at)}` : `DTSTART;VALUE=DATE:${at.replaceAll("-", "")}`;
}

function eventLines({ uid, at, summary, description, location, tentative, alarms }: CalendarEvent, stamp: string) {
  return [
    "BEGIN:VEVENT",
    `UID:${textValue(uid)}`,
    `DTSTAMP:${stamp}`,
    start(at),
    `SUMMARY:${textValue(summary)}`,
    `DESCRIPTION:${textValue(description)}`,
    ...(location === "" ? [] : [`LOCATION:${textValue(location)}`]),
    `STATUS:${tentative ? "TENTATIVE" : "CONFIRMED"}`,
    "TRANSP:TRANSPARENT",
    ...alarms.flatMap((before) => [
      "BEGIN:VALARM",
      "ACTION:DISPLAY",
      `DESCRIPTION:${textValue(summary)}`,
      `TRIGGER:-${before}`,
      "END:VALARM",
    ]),
    "END:VEVENT",
  ];
}

/**
 * A calendar as RFC 5545 has it: CRLF, lines of at most 75 octets. `stamp` is a moment with its offset, when the file
 * these events come from was issued; no clock is read, and the same events give the same bytes.
 */
export function iCalendar(name: string, stamp: string, events: readonly CalendarEvent[]): string {
  const issued = utc(stamp);
  return [
    "BEGIN:VCALENDAR",
    "VERSION:2.0",
    "PRODID:-//Good Grounds//Duties//EN",
    "CALSCALE:GREGORIAN",
    "METHOD:PUBLISH",
    `NAME:${textValue(name)}`,
    `X-WR-CALNAME:${textValue(name)}`,
    ...events.flatMap((event) => eventLines(event, issued)),
    "END:VCALENDAR",
  ]
    .map(folded)
    .join("");
}
