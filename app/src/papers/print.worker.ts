import { type PrintProgress, planSet, printPlanSet, sheetMarks } from '@kneewall/documents/planSet';
import normal from 'dejavu-fonts-ttf/ttf/DejaVuSansCondensed.ttf?url';
import bold from 'dejavu-fonts-ttf/ttf/DejaVuSansCondensed-Bold.ttf?url';
import type { Printed, ToPrint } from './messages.ts';

const send = (message: Printed, move: Transferable[] = []): void => self.postMessage(message, { transfer: move });

const bytesAt = async (url: string): Promise<Uint8Array> => new Uint8Array(await (await fetch(url)).arrayBuffer());

/** ms between two messages about how far a print is: a page takes less than it takes to show that. */
const seldom = 100;

function tellNowAndThen(): (progress: PrintProgress) => void {
  let last = -seldom;
  return (progress) => {
    const now = performance.now();
    if (now - last < seldom) return;
    last = now;
    send({ type: 'printing', progress });
  };
}

/** Makes one plan set and hands its bytes over, or only the marks of its sheets. */
self.onmessage = async ({ data: { letters, parts, only, ...input } }: MessageEvent<ToPrint>) => {
  try {
    const set = planSet(input, letters, parts);
    const marks = sheetMarks(set);
    if (only === 'marks') return send({ type: 'marked', marks });
    const fonts = { normal: await bytesAt(normal), bold: await bytesAt(bold) };
    const bytes = await printPlanSet(set, fonts, tellNowAndThen());
    send({ type: 'printed', bytes, marks }, [bytes.buffer as ArrayBuffer]);
  } catch (error) {
    send({ type: 'failed', why: error instanceof Error ? error.message : String(error) });
  }
};
