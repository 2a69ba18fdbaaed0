/** A random name for a device or a project: 16 hexadecimal digits. */
export function randomId(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(8));
  return Array.from(bytes, (b) => b.toString(16).padStart(2, '0')).join('');
}

/** An id for a new entry of a map: what one entry is called, and the first free number. */
export function entryId(one: string, taken: Readonly<Record<string, unknown>>): string {
  const stem =
    one
      .toLowerCase()
      .replaceAll(/[^a-z0-9]+/g, '-')
      .replaceAll(/^-|-$/g, '') || 'entry';
  let n = 1;
  while (`${stem}-${n}` in taken) n++;
  return `${stem}-${n}`;
}

/** An order key that compares after another as plain text. */
export function orderAfter(last: string | undefined): string {
  if (last === undefined || last === '') return 'm';
  const head = last.slice(0, -1);
  const tail = last.slice(-1);
  if ((tail >= '0' && tail < '9') || (tail >= 'a' && tail < 'z'))
    return head + String.fromCharCode(tail.charCodeAt(0) + 1);
  return tail === '9' ? `${head}a` : `${last}m`;
}
