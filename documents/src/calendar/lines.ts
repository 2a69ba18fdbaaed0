/** Octets of a letter in UTF-8. */
const octets = (letter: string): number => {
  const code = letter.codePointAt(0) ?? 0;
  return code < 0x80 ? 1 : code < 0x800 ? 2 : code < 0x10000 ? 3 : 4;
};

/** A content line in pieces of at most 75 octets, each further one after a line break and a space; no letter is cut. RFC 5545, 3.1. */
export function foldedLine(line: string): string {
  const out: string[] = [];
  let piece = '';
  let room = 75;
  for (const letter of line) {
    const size = octets(letter);
    if (size > room) {
      out.push(piece);
      piece = '';
      room = 74;
    }
    piece += letter;
    room -= size;
  }
  return [...out, piece].join('\r\n ');
}

/** A text as a property's value: backslash, semicolon, comma and line ends escaped. RFC 5545, 3.3.11. */
export const textValue = (text: string): string =>
  text.replaceAll(/[\\;,]/g, (c) => `\\${c}`).replaceAll(/\r\n|\r|\n/g, '\\n');
