import { moistAir } from '@kneewall/engine/physics';
import psychrolib from 'psychrolib';
import { describe, expect, it } from 'vitest';
import { checkSource } from '../src/checkSource.ts';
import { source } from './measure.ts';

checkSource(source, 173);

describe('random states against the general psychrometric library psychrolib 1.1.1 (computed)', () => {
  psychrolib.SetUnitSystem(psychrolib.SI);
  // A fixed linear congruential sequence: the same 400 states every time.
  let seed = 20261125;
  const random = () => {
    seed = (seed * 1664525 + 1013904223) % 4294967296;
    return seed / 4294967296;
  };
  it('agree in humidity ratio, dew point, wet bulb, enthalpy and volume', () => {
    for (let i = 0; i < 400; i++) {
      const [t, rh, p] = [-30 + 80 * random(), 0.05 + 0.93 * random(), 70_000 + 35_000 * random()];
      const ours = moistAir({ t, rh }, p);
      expect(ours.w / psychrolib.GetHumRatioFromRelHum(t, rh, p)).toBeCloseTo(1, 4);
      expect(Math.abs(ours.dewPoint - psychrolib.GetTDewPointFromRelHum(t, rh))).toBeLessThan(0.005);
      const bulb = psychrolib.GetTWetBulbFromRelHum(t, rh, p);
      // Between the ice and the water branch the library jumps; there ours says 0 °C.
      if (Math.abs(bulb) > 0.4) expect(Math.abs(ours.wetBulb - bulb)).toBeLessThan(0.006);
      expect(Math.abs(ours.enthalpy - psychrolib.GetMoistAirEnthalpy(t, ours.w) / 1000)).toBeLessThan(0.001);
      expect(ours.volume / psychrolib.GetMoistAirVolume(t, ours.w, p)).toBeCloseTo(1, 5);
    }
  });
});
