import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';

/** JSON with sorted keys and -0 as 0, so that equal values have equal texts. Absent and undefined are the same. */
export function canonicalJson(value: unknown): string {
  if (typeof value === 'number') {
    if (!Number.isFinite(value)) throw new Error('assert: only finite numbers have a canonical text');
    return JSON.stringify(value === 0 ? 0 : value);
  }
  if (value === null || typeof value !== 'object') return JSON.stringify(value ?? null);
  if (Array.isArray(value)) return `[${value.map(canonicalJson).join(',')}]`;
  const entries = Object.entries(value)
    .filter(([, v]) => v !== undefined)
    .sort(([a], [b]) => (a < b ? -1 : 1));
  return `{${entries.map(([k, v]) => `${JSON.stringify(k)}:${canonicalJson(v)}`).join(',')}}`;
}

/** SHA-256 of a text, lower-case hexadecimal. */
export const hashOf = (text: string): string => bytesToHex(sha256(utf8ToBytes(text)));

/** SHA-256 of bytes: the name of a blob. */
export const hashOfBytes = (bytes: Uint8Array): string => bytesToHex(sha256(bytes));

/** The text a project is saved as: two spaces, keys as they stand, one newline at the end. */
export const projectText = (project: unknown): string => `${JSON.stringify(project, null, 2)}\n`;
