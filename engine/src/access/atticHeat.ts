import type { ResolvedProject } from '@kneewall/project';
import type { ClimateResult } from '../climate/result.ts';
import type { LoadsResult } from '../loads/result.ts';
import { wetBulb } from '../physics/air/index.ts';
import { required, unresolved } from '../plan/outcome.ts';
import type { Scenario } from '../plan/scenario.ts';
import type { WorkingRecorder } from '../plan/working.ts';
import { minutesAnHour, wbgtInside } from './kernels/heat.ts';
import type { Working } from './result.ts';

type Heat = ResolvedProject['routes']['access']['heat'];

/** K that the bulb stands above that of air led past it, in an attic's radiation. Source: `access.attic-heat`. */
const radiated = 1;
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
  const roof = dawn ? attic : day.outdoor.likely + required(loads.attic).sunRise;
  if (!Number.isFinite(attic) || !Number.isFinite(roof)) return unresolved('missing', 'house.attic');
  const globe = (attic + roof) / 2;
  const wet = wetBulb(attic, day.humidityRatio, required(climate.pressure)) + radiated;
  rec.step('T_attic', 'table', {}, attic, '°C', 'access.attic-heat');
  rec.step('T_g', '(T_attic + T_roof) / 2', { T_attic: attic, T_roof: roof }, globe, '°C', 'access.attic-heat');
  rec.step('T_nw', 'table', { T_attic: attic, W: day.humidityRatio }, wet, '°C', 'access.wet-bulb');
  const plus = clothes[s.choice(heat.clothes)];
  const index = wbgtInside(wet, globe) + plus;
  rec.step(
    'WBGT',
    '0.7 * T_nw + 0.3 * T_g + clothes',
    { T_nw: wet, T_g: globe, clothes: plus },
    index,
    '°C',
    'access.wbgt',
  );
  const used = s.choice(heat.used) === 'yes';
  const at = (effort: 'light' | 'moderate' | 'heavy'): number => minutesAnHour(index, effort, used);
  const minutes = at(s.choice(heat.effort));
  const byEffort = { light: at('light'), moderate: at('moderate'), heavy: at('heavy') };
  return { attic, globe, wet, index, minutes, byEffort };
}

/** K of an attic above the coolest air of the morning. Source: `access.attic-heat`. */
const dawnAbove = 2;
