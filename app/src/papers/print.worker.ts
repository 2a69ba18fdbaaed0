import { planSet, printPlanSet } from '@kneewall/documents/planSet';
import normal from 'dejavu-fonts-ttf/ttf/DejaVuSansCondensed.ttf?url';
import bold from 'dejavu-fonts-ttf/ttf/DejaVuSansCondensed-Bold.ttf?url';
import type { Printed, ToPrint } from './messages.ts';

const send = (message: Printed, move: Transferable[] = []): void => self.postMessage(message, { transfer: move });

const bytesAt = async (url: string): Promise<Uint8Array> => new Uint8Array(await (await fetch(url)).arrayBuffer());

/** Makes one plan set and hands its bytes over. */
self.onmessage = async ({ data: { letters, parts, ...input } }: MessageEvent<ToPrint>) => {
  try {
    const fonts = { normal: await bytesAt(normal), bold: await bytesAt(bold) };
    const bytes = await printPlanSet(planSet(input, letters, parts), fonts);
    send({ type: 'printed', bytes }, [bytes.buffer as ArrayBuffer]);
  } catch (error) {
    send({ type: 'failed', why: error instanceof Error ? error.message : String(error) });
  }
};
