import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';

/** JSON with sorted keys and -0 as 0, so that equal values have equal texts. Absent and undefined are the same. */
export function canonicalJson(value: unknown): string {
  if (typeof value === 'number') {
    if (!Number.isFinite(value)) throw new Error('assert: only finite numbers have a canonical text');
    // For a finite number the very text that JSON has for it, -0 as 0.
    return String(value);
  }
  if (value === null || typeof value !== 'object') return JSON.stringify(value ?? null);
  return Array.isArray(value) ? textOfList(value) : textOfRecord(value as Readonly<Record<string, unknown>>);
}

function textOfList(list: readonly unknown[]): string {
  let text = '[';
  for (let i = 0; i < list.length; i++) text += i === 0 ? canonicalJson(list[i]) : `,${canonicalJson(list[i])}`;
  return `${text}]`;
}

function textOfRecord(record: Readonly<Record<string, unknown>>): string {
  let text = '';
  for (const key of Object.keys(record).sort()) {
    const value = record[key];
    if (value !== undefined) text += `${text === '' ? '' : ','}${canonicalName(key)}:${canonicalJson(value)}`;
  }
  return `{${text}}`;
}

/** A name as canonical text has it. Names of plain letters need no escapes, and most are of that kind. */
export const canonicalName = (key: string): string => (/^[\w:. -]*$/.test(key) ? `"${key}"` : JSON.stringify(key));

/** SHA-256 of a text, lower-case hexadecimal. */
export const hashOf = (text: string): string => bytesToHex(sha256(utf8ToBytes(text)));

/** SHA-256 of bytes: the name of a blob. */
export const hashOfBytes = (bytes: Uint8Array): string => bytesToHex(sha256(bytes));

/** The name of a blob whose bytes come piece by piece. */
export function blobHasher(): { readonly add: (bytes: Uint8Array) => void; readonly name: () => string } {
  const hash = sha256.create();
  return { add: (bytes) => void hash.update(bytes), name: () => bytesToHex(hash.digest()) };
}

/** The text a project is saved as: two spaces, keys as they stand, one newline at the end. */
export const projectText = (project: unknown): string => `${JSON.stringify(project, null, 2)}\n`;
