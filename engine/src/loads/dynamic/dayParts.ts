import { dayLoad, quickly } from './designDays.ts';
import type { DayWeather } from './designWeather.ts';
import type { HouseInputs } from './houseInputs.ts';
import type { ShellSurface } from './shell.ts';

/** What drives the cooling load, each by what the worst hour takes less without it; and what is left, through the shell. */
export const dayDrivers = ['window-sun', 'shell-sun', 'air', 'people', 'appliances'] as const;
export type DayDriver = (typeof dayDrivers)[number];
export type DayPart = { readonly driver: DayDriver | 'through'; readonly heat: number };

const eachSurface = (inputs: HouseInputs, change: (x: ShellSurface) => ShellSurface): HouseInputs => ({
  ...inputs,
  shell: { ...inputs.shell, surfaces: inputs.shell.surfaces.map(change) },
});

/** The house without one driver. */
const without: Readonly<Record<DayDriver, (x: HouseInputs) => HouseInputs>> = {
  'window-sun': (h) => eachSurface(h, (x) => ({ ...x, windows: x.windows.map((w) => ({ ...w, covering: 0 })) })),
  'shell-sun': (h) => {
    const dull = eachSurface(h, (x) => ({ ...x, absorptance: 0 }));
    return { ...dull, shell: { ...dull.shell, roof: { ...dull.shell.roof, absorptance: 0 } } };
  },
  air: (h) => ({ ...h, envelope: { ...h.envelope, coefficient: 0 } }),
  people: (h) => ({ ...h, people: 0 }),
  appliances: (h) => ({ ...h, appliances: 0 }),
};

/**
 * Sensible heat of the worst hour by what drives it, W, largest first. Each part is what the hour would take less
 * without that driver, walls and all; the rest came through walls, glass and ceilings. They add up to the hour.
 */
export function dayParts(inputs: HouseInputs, day: DayWeather): DayPart[] {
  // No driver changes a wall.
  const run = quickly();
  const whole = dayLoad(inputs, day, run);
  const load = whole.sensible[whole.worst] ?? 0;
  const parts = dayDrivers.map((driver): DayPart => {
    const less = dayLoad(without[driver](inputs), day, run).sensible[whole.worst] ?? 0;
    return { driver, heat: load - less };
  });
  const rest = load - parts.reduce((a, p) => a + p.heat, 0);
  return [...parts, { driver: 'through' as const, heat: rest }].sort((a, b) => b.heat - a.heat);
}
