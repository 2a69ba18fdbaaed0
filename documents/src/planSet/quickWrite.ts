import type { Written } from 'pdfmake/build/pdfmake.js';

/**
 * Lets parts of a document of the printing library gather their lines as text and make bytes of them once, at their end:
 * a page has thousands of lines. The bytes are the same.
 */
export function quickWrite(part: Written): void {
  const kind = Object.getPrototypeOf(part) as Written & { quick?: true };
  if (kind.quick) return;
  kind.quick = true;
  const { write, finalize } = kind;
  const lines = new WeakMap<Written, string[]>();
  const put = (to: Written): void => {
    const waiting = lines.get(to);
    if (!waiting) return;
    lines.delete(to);
    write.call(to, bytesOf(`${waiting.join('\n')}\n`));
  };
  kind.write = function (chunk) {
    if (typeof chunk !== 'string') {
      put(this);
      write.call(this, chunk);
      return;
    }
    const waiting = lines.get(this);
    if (waiting) waiting.push(chunk);
    else lines.set(this, [chunk]);
  };
  kind.finalize = function () {
    put(this);
    finalize.call(this);
  };
}

/** One byte for each sign, as these lines are written. */
function bytesOf(text: string): Uint8Array {
  const bytes = new Uint8Array(text.length);
  for (let i = 0; i < text.length; i++) bytes[i] = text.charCodeAt(i);
  return bytes;
}
