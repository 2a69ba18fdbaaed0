import type { ResolvedProject } from '@kneewall/project';
import type { ClimateResult } from '../climate/result.ts';
import type { LoadsResult } from '../loads/result.ts';
import { required, unresolved } from '../plan/outcome.ts';
import type { Scenario } from '../plan/scenario.ts';
import type { WorkingRecorder } from '../plan/working.ts';
import { minutesAnHour } from './kernels/heat.ts';
import { type Worker, workHour } from './kernels/hours.ts';
import type { Working } from './result.ts';

type Heat = ResolvedProject['routes']['access']['heat'];

/** K that clothes add. Source: `access.clothes`. */
const clothes = { woven: 0, paper: 0.5, double: 3, sealed: 11 } as const;

/** The attic's index while people work there, and the minutes of an hour that it leaves. Not in the cold season. */
export function workingHeat(
  heat: Heat,
  { climate, loads }: { readonly climate: ClimateResult; readonly loads: LoadsResult },
  s: Scenario,
  rec: WorkingRecorder,
): Working {
  const day = required(climate.day);
  const dawn = s.choice(heat.time) === 'dawn';
  const coolest = Math.min(...day.hours.map((h) => h.outdoor));
  const hot = required(loads.atticDay).likely;
  // Before the sun is on the roof the attic is close to the night's air; what the rooms below give is within the margin.
  const attic = dawn ? coolest + dawnAbove : hot;
  const roof = dawn ? attic : day.outdoor.likely + required(loads.atticSunRise);
  if (!Number.isFinite(attic) || !Number.isFinite(roof)) return unresolved('missing', 'house.attic');
  const worker = workerOf(heat, s);
  const { globe, wet, index, minutes } = workHour(
    { air: attic, humidity: day.humidityRatio, roof },
    worker,
    required(climate.pressure),
  );
  rec.step('T_attic', 'table', {}, attic, '°C', 'access.attic-heat');
  rec.step('T_g', '(T_attic + T_roof) / 2', { T_attic: attic, T_roof: roof }, globe, '°C', 'access.attic-heat');
  rec.step('T_nw', 'table', { T_attic: attic, W: day.humidityRatio }, wet, '°C', 'access.wet-bulb');
  rec.step(
    'WBGT',
    '0.7 * T_nw + 0.3 * T_g + clothes',
    { T_nw: wet, T_g: globe, clothes: worker.clothes },
    index,
    '°C',
    'access.wbgt',
  );
  const at = (effort: 'light' | 'moderate' | 'heavy'): number => minutesAnHour(index, effort, worker.used);
  const byEffort = { light: at('light'), moderate: at('moderate'), heavy: at('heavy') };
  return { attic, globe, wet, index, minutes, byEffort };
}

/** K of an attic above the coolest air of the morning. Source: `access.attic-heat`. */
const dawnAbove = 2;

/** Who works up there, as entered. */
export const workerOf = (heat: Heat, s: Scenario): Worker => ({
  effort: s.choice(heat.effort),
  used: s.choice(heat.used) === 'yes',
  clothes: clothes[s.choice(heat.clothes)],
});
