import { type HouseYear, type Printer, printerFor, type YearTable } from '@kneewall/engine';
import { type Project, type System, shortMonths } from '@kneewall/project';
import { type Paint, wrap } from './text.ts';

const width = 78;
const barWidth = 24;

/** A year in this house, in 80 columns. */
export function yearLines(project: Project, year: HouseYear, units: System, paint: Paint): string[] {
  const print = printerFor(units);
  const invented = project.about?.invented ? ['All of its data are invented.'] : [];
  const source =
    project.site?.weather?.blob === undefined
      ? 'The weather is made from twelve months: it states energy, not what a rare winter brings.'
      : 'The weather is the imported year: it states energy, not what a rare winter brings.';
  const text = [
    `It takes ${print.quantity(year.heating.energy, 'energy')} of heat in the year, at most ${print.quantity(year.heating.peak, 'power')} in one hour.`,
    `It takes ${print.quantity(year.cooling.sensible, 'energy')} of cooling and ${print.quantity(year.cooling.latent, 'energy')} of drying, at most ${print.quantity(year.cooling.peak, 'power')} in one hour.`,
    `Left to itself it lies below what is wanted for ${Math.round(year.alone.cold)} hours and above it for ${Math.round(year.alone.hot)}: from ${print.quantity(year.alone.lowest, 'temperature')} to ${print.quantity(year.alone.highest, 'temperature')}.`,
    ...atticLine(year, print),
    `With windows kept shut its air is above 70 % humidity for ${Math.round(year.humidity.dampHours)} hours and below 30 % for ${Math.round(year.humidity.dryHours)}.`,
  ];
  return [
    paint(`${project.about?.name ?? 'The project'}: a year`, 'bold'),
    ...invented,
    ...wrap(source, width),
    '',
    ...text.flatMap((line) => wrap(line, width)),
    '',
    ...monthLines(year, print),
  ];
}

const atticLine = (year: HouseYear, print: Printer): string[] =>
  year.atticMost === undefined
    ? []
    : [
        `The attic reaches ${print.quantity(year.atticMost, 'temperature')} and is above ${print.quantity(40, 'temperature')} for ${Math.round(year.atticHotHours ?? 0)} hours. Heat kills: work there in short turns, by published work and rest limits.`,
      ];

function monthLines(year: HouseYear, print: Printer): string[] {
  const most = Math.max(...year.heating.months, ...year.cooling.months, 1e-9);
  const bar = (energy: number): string => '#'.repeat(Math.round((barWidth * energy) / most)).padEnd(barWidth);
  const cell = (energy: number): string => print.quantity(energy, 'energy').padStart(10);
  return [
    `     ${'heat'.padStart(10)} ${' '.repeat(barWidth)} ${'cold'.padStart(10)}`,
    ...shortMonths.map((name, m) => {
      const [heat, cold] = [year.heating.months[m] ?? 0, year.cooling.months[m] ?? 0];
      return `${name}  ${cell(heat)} ${bar(heat)} ${cell(cold)} ${bar(cold)}`.trimEnd();
    }),
  ];
}

/** Every row of the year: °C, kg/kg, W; a heading in plain words. */
export function yearCsv({ loaded, free }: YearTable): string {
  const { record, zones, rooms } = loaded;
  const head = [
    'hours since 1 January',
    'outdoor C',
    ...zones.map((z) => `${z} C`),
    ...free.zones.map((z) => `${z} without any unit C`),
    ...zones.map((z) => `${z} humidity kg/kg`),
    ...rooms.map((r) => `${r} heating W`),
    ...rooms.map((r) => `${r} cooling W`),
  ];
  const part = (x: Float64Array, of: number, row: number, digits: number): string[] =>
    Array.from({ length: of }, (_, k) => (x[row * of + k] ?? 0).toFixed(digits));
  const rows = Array.from({ length: loaded.rows }, (_, row) =>
    [
      ((row * loaded.rowSeconds) / 3600).toFixed(2),
      (loaded.outdoor[row] ?? 0).toFixed(2),
      ...part(record.temperature, zones.length, row, 2),
      ...part(free.record.temperature, free.zones.length, row, 2),
      ...part(record.humidity, zones.length, row, 5),
      ...part(record.heating, rooms.length, row, 1),
      ...part(record.cooling, rooms.length, row, 1),
    ].join(','),
  );
  return `${[head.map((h) => (/[",]/.test(h) ? `"${h.replaceAll('"', '""')}"` : h)).join(','), ...rows].join('\n')}\n`;
}
