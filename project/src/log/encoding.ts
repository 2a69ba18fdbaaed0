/** How a file's bytes are to be read as text: names that every decoder knows. */
export type LogEncoding = 'utf-8' | 'utf-16le' | 'utf-16be' | 'windows-1252';

/** Tells the encoding by the mark at the beginning, by zeros between letters, or because it is no valid UTF-8. Looks at the first 64 kB. */
export function encodingOf(bytes: Uint8Array): LogEncoding {
  const [a = 0, b = 0] = bytes;
  if (a === 0xff && b === 0xfe) return 'utf-16le';
  if (a === 0xfe && b === 0xff) return 'utf-16be';
  const looked = Math.min(bytes.length, 65_536);
  let even = 0;
  let odd = 0;
  for (let i = 0; i < looked; i++)
    if (bytes[i] === 0) {
      if (i % 2 === 0) even++;
      else odd++;
    }
  if (odd > looked / 4) return 'utf-16le';
  if (even > looked / 4) return 'utf-16be';
  return isUtf8(bytes, looked) ? 'utf-8' : 'windows-1252';
}

function isUtf8(bytes: Uint8Array, looked: number): boolean {
  for (let i = 0; i < looked; i++) {
    const byte = bytes[i] ?? 0;
    if (byte < 0x80) continue;
    const more = byte >= 0xf0 ? 3 : byte >= 0xe0 ? 2 : byte >= 0xc2 ? 1 : -1;
    if (more < 0) return false;
    for (let k = 1; k <= more && i + k < looked; k++) if (((bytes[i + k] ?? 0) & 0xc0) !== 0x80) return false;
    i += more;
  }
  return true;
}
