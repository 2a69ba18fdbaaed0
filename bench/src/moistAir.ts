import { moistAir } from '@kneewall/engine/physics';
import psychrolib from 'psychrolib';
import { atMost, type BenchRow, side } from './measure.ts';

const states = Array.from({ length: 200 }, (_, i) => ({ t: -20 + ((i * 7) % 60), rh: 0.2 + ((i * 13) % 70) / 100 }));

/** Question: is a whole state from dry bulb and relative humidity at least ten times faster than the general library's? */
export function moistAirBench(): BenchRow[] {
  psychrolib.SetUnitSystem(psychrolib.SI);
  for (const { t, rh } of states) {
    const miss = Math.abs(moistAir({ t, rh }, 101_325).w / psychrolib.GetHumRatioFromRelHum(t, rh, 101_325) - 1);
    if (miss > 1e-4) throw new Error('the two libraries disagree');
  }
  const times = side(
    () => {
      for (const s of states) moistAir(s, 101_325);
    },
    () => {
      for (const { t, rh } of states) psychrolib.CalcPsychrometricsFromRelHum(t, rh, 101_325);
    },
  );
  return [atMost('moist air: state from dry bulb and humidity', times, 0.1, 'at most 0.1 of the general library')];
}
