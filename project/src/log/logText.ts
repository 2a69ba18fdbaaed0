import { encodingOf, type LogEncoding } from './encoding.ts';

/** The beginning and the end of a log: what tells how it is written. */
export type LogEnds = { readonly head: string; readonly tail: string };

/** A log that comes piece by piece. `size` and `done` count in one measure, characters or bytes. */
export type LogText = {
  readonly ends: LogEnds;
  readonly size: number;
  readonly pieces: () => Iterable<{ readonly text: string; readonly done: number }>;
};

/** A file that is fetched by pieces, so that no more of it is in memory than is being read. */
export type LogBytes = { readonly size: number; readonly bytes: (from: number, to: number) => Uint8Array };

/** What turns bytes into text; every host has its own. With `stream` a letter may be cut by the end of a piece. */
export type Decoder = { decode(bytes?: Uint8Array, how?: { stream: boolean }): string };
export type DecoderOf = (encoding: LogEncoding) => Decoder;

/** Characters, or bytes, at each end that are looked at. */
export const endLength = 65_536;
/** Small enough that what was read is let go at once and never piles up. */
const pieceLength = 65_536;

/** Bytes that are turned into letters by one call. */
const callLength = 8192;

/**
 * Text of bytes that are plain letters, the same in every encoding of one byte a letter; undefined where any is not. A browser's
 * decoder keeps its strings outside the memory it tidies often, so that a whole file of them piles up.
 */
function plainText(bytes: Uint8Array): string | undefined {
  if (bytes.some((b) => b > 127)) return undefined;
  let text = '';
  for (let at = 0; at < bytes.length; at += callLength)
    text += String.fromCharCode(...bytes.subarray(at, at + callLength));
  return text;
}

/** A text that is at hand as a whole. */
export const logTextOf = (text: string): LogText => ({
  ends: {
    head: text.slice(0, endLength),
    tail: text.length > endLength ? text.slice(Math.max(endLength, text.length - endLength)) : '',
  },
  size: text.length,
  *pieces() {
    for (let at = 0; at < text.length; at += pieceLength)
      yield { text: text.slice(at, at + pieceLength), done: Math.min(at + pieceLength, text.length) };
  },
});

/** Where the end that is looked at begins: on an even byte, since letters may be two bytes. */
export const tailFrom = (size: number): number => Math.max(endLength, size - endLength + (size % 2));

/** The ends of a file from the bytes of its first and last part. */
export function logEndsOf(first: Uint8Array, last: Uint8Array, decoderOf: DecoderOf): LogEnds {
  const encoding = encodingOf(first);
  const read = (bytes: Uint8Array): string => decoderOf(encoding).decode(bytes, { stream: true });
  return { head: read(first), tail: read(last) };
}

/** A file as text, decoded as it is read. `heard` gets every piece of bytes once, in order. */
export function logTextOfBytes(file: LogBytes, decoderOf: DecoderOf, heard: (bytes: Uint8Array) => void = () => {}) {
  const { size } = file;
  const first = file.bytes(0, Math.min(size, endLength));
  const encoding = encodingOf(first);
  return {
    ends: logEndsOf(first, size > endLength ? file.bytes(tailFrom(size), size) : new Uint8Array(), decoderOf),
    size,
    *pieces() {
      const decoder = decoderOf(encoding);
      // A letter of several bytes may be cut by the end of a piece: what comes next goes to the decoder that waits for it.
      let cut = encoding.startsWith('utf-16');
      for (let at = 0; at < size; at += pieceLength) {
        const done = Math.min(at + pieceLength, size);
        const bytes = file.bytes(at, done);
        heard(bytes);
        const plain = cut ? undefined : plainText(bytes);
        yield { text: plain ?? decoder.decode(bytes, { stream: done < size }), done };
        cut = plain === undefined && (encoding.startsWith('utf-16') || (bytes.at(-1) ?? 0) > 127);
      }
    },
  } satisfies LogText;
}
