import { describe, expect, it } from 'vitest';
import { materials } from './materials.ts';
import type { LinesetResult } from './result.ts';

const lines = (channel?: LinesetResult['channel']) =>
  materials({
    set: { ok: true, value: { id: 's', length: 7.5 } },
    needed: { ok: true, value: { low: 6, likely: 6.2, high: 6.6 } },
    ...(channel ? { channel } : {}),
  } as LinesetResult);
const amount = (of: ReturnType<typeof lines>, id: string) => of.find((l) => l.id === `lineset/${id}`)?.amount;

describe('a channel along the wall', () => {
  it('is cut stretch by stretch, with a piece for each turn and clips for the line inside', () => {
    const made = lines({ ok: true, value: { legs: [1.2, 2.1, 0.3], sold: 1.9812 } });
    const channel = made.find((l) => l.id === 'lineset/channel');
    expect(channel?.amount).toBeCloseTo(3.6, 12);
    expect(channel?.pieces?.map((p) => p.length * p.count)).toEqual([1.2, 2.1, 0.3]);
    // Two turns and an end; 3 m of line inside at a clip every 0.6 m.
    expect([amount(made, 'channel-turns'), amount(made, 'clips')]).toEqual([3, 5]);
  });

  it('is no matter of a line that clips hold, or whose way is not known', () => {
    for (const none of [undefined, { ok: false, because: 'missing', paths: [] } as const]) {
      expect(amount(lines(none), 'channel')).toBeUndefined();
      expect(amount(lines(none), 'clips')).toBe(11);
    }
  });
});
