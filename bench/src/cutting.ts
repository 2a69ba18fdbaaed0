import { cutBars, packSheets, type SheetJob } from '@kneewall/engine/physics';
import { atMost, type BenchRow, multiplyAdds, perMillisecond, side } from './measure.ts';

const inch = 0.0254;

/** 40 pieces of board for a house's boxes and caps, made by arithmetic, invented. In: across the grooves, and along. */
const boxes = (small: number): SheetJob => ({
  pieces: Array.from({ length: 40 }, (_, i) => ({
    id: `piece ${i}`,
    width: (small + 0.25 * ((37 * i) % 90)) * inch,
    height: (small + 0.25 * ((53 * i) % 120)) * inch,
    count: 1,
    turns: true,
  })),
  stock: [{ id: 'board', width: 120 * inch, height: 48 * inch }],
  kerf: 0.003,
  trim: 0,
  remnantLeast: 0.3,
});

/** 120 pieces of 80 lengths, made by arithmetic, invented. */
const straight = {
  pieces: Array.from({ length: 120 }, (_, i) => ({ id: `p${i}`, length: 0.4 + 0.02 * ((29 * i) % 80), count: 1 })),
  stock: [{ id: 'bar', length: 3 }],
  kerf: 0.003,
  remnantLeast: 0.3,
};

/** Question: are 40 pieces packed on sheets, the search ended by its counts or by proof, while somebody waits? */
export function cuttingBench(): BenchRow[] {
  const plans = [boxes(14), boxes(8)].map(packSheets);
  for (const plan of plans) {
    const placed = plan.sheets.flatMap((s) => s.placed).length;
    if (placed !== 40 || plan.problems.length > 0) throw new Error('all pieces are placed');
    if (plan.sheets.length < plan.bound) throw new Error('no plan is below its bound');
  }
  const bars = cutBars(straight);
  if (!bars.proved || bars.bars.length !== bars.bound) throw new Error('the bars are proved');
  const once = (job: SheetJob) =>
    side(
      () => void packSheets(job),
      () => multiplyAdds(1500 * perMillisecond),
    );
  const cut = side(
    () => void cutBars(straight),
    () => multiplyAdds(1000 * perMillisecond),
  );
  return [
    atMost('40 large pieces on sheets', once(boxes(14)), 1, 'at most 1.5 s'),
    atMost('40 pieces on sheets', once(boxes(8)), 1, 'at most 1.5 s'),
    atMost('120 pieces from bars, exact', cut, 1, 'at most 1 s'),
  ];
}
