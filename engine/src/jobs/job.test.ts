import { createHash } from 'node:crypto';
import { canonicalJson } from '@kneewall/project';
import { describe, expect, it } from 'vitest';
import { makeJob, type PlainParts } from './job.ts';

const section = { id: 'b', length: 0.1 + 0.2, loss: [1 / 3, -0], from: undefined, 'odd "name"': null };
const model = { sections: [section, { ...section, id: 'a' }], blower: { points: [{ flow: 0.1, pressure: 200 }] } };

describe('a job', () => {
  it('has the key that SHA-256 gives for its canonical text, numbers to nine digits', () => {
    const plain = { id: 'b', length: 0.3, loss: [0.333333333, 0], 'odd "name"': null };
    const inputs = { model: { sections: [plain, { ...plain, id: 'a' }], blower: model.blower }, seed: 3 };
    const text = canonicalJson({ kind: 'k', version: 1, inputs });
    const { key } = makeJob('k', 1, { seed: 3, model }, 'short');
    expect(key).toBe(createHash('sha256').update(text).digest('hex'));
  });

  it('is the same whatever parts of it were made plain for others before', () => {
    const kept: PlainParts = new WeakMap();
    makeJob('other', 1, { deep: { model, all: [section] }, model }, 'short', kept);
    expect(makeJob('k', 1, { model }, 'short', kept)).toEqual(makeJob('k', 1, { model }, 'short'));
  });

  it('keeps the order in which names stand in its inputs', () => {
    const { inputs } = makeJob('k', 1, { rooms: { z: 1, a: 2 } }, 'short');
    expect(Object.keys((inputs as { rooms: object }).rooms)).toEqual(['z', 'a']);
  });
});
