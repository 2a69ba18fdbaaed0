import { type Finding, type HoldPoint, type Plan, printerFor, type Status } from '@kneewall/engine';
import type { Project, System } from '@kneewall/project';
import { type Paint, wrap } from './text.ts';

const width = 78;
const marks: Readonly<
  Record<Status, { readonly mark: string; readonly word: string; readonly colour: 'red' | 'yellow' | 'blue' | 'green' }>
> = {
  fails: { mark: 'x', word: 'fails', colour: 'red' },
  tight: { mark: '!', word: 'tight', colour: 'yellow' },
  unknown: { mark: '?', word: 'unknown', colour: 'blue' },
  ok: { mark: '+', word: 'ok', colour: 'green' },
};
const titles: Readonly<Record<HoldPoint, string>> = {
  decide: 'Before you decide',
  order: 'Before you order',
  lift: 'Before you lift',
  cut: 'Before you cut',
  connect: 'Before you connect',
  close: 'Before you close anything up',
  start: 'Before you start it',
  season: 'Every season',
};

/** The plan as a careful friend would tell it: the sum of it first, then what stands against each hold point. */
export function planLines(project: Project, plan: Plan, units: System, paint: Paint, all: boolean): string[] {
  const name = project.about?.name ?? 'The project';
  const invented = project.about?.invented ? ['All of its data are invented.'] : [];
  return [
    paint(name, 'bold'),
    ...invented,
    '',
    ...summary(plan, units),
    ...plan.holdPoints.flatMap((h) => holdPointLines(h.holdPoint, plan, paint, all)),
    '',
    ...counts(plan),
  ];
}

function summary(plan: Plan, units: System): string[] {
  const print = printerFor(units);
  const { loads, equipment } = plan.trades;
  const lines: string[] = [];
  if (loads?.heating.ok)
    lines.push(
      `On the coldest normal night the house loses ${print.range(loads.heating.value, 'power')}, likely ${print.quantity(loads.heating.value.likely, 'power')}.`,
    );
  if (loads?.cooling.ok)
    lines.push(`On the hottest normal afternoon it takes in ${print.range(loads.cooling.value.sensible, 'power')}.`);
  if (loads?.heating.ok && loads.heating.value.drivers.length > 0) {
    const worth = loads.heating.value.drivers.slice(0, 3).map((d) => {
      const reach = Math.max(Math.abs(d.atLow), Math.abs(d.atHigh));
      return `${print.field(d.path)} (worth ${print.quantity(reach, 'power')})`;
    });
    lines.push(`Measure first: ${worth.join('; ')}.`);
  }
  if (loads?.sums?.ok) {
    const { heating, cooling } = loads.sums.value;
    lines.push(
      `Sums of steady parts would say ${print.quantity(heating, 'power')} and ${print.quantity(cooling, 'power')}: they leave out what walls hold back.`,
    );
  }
  if (loads?.year.ok)
    lines.push(
      `An ordinary year takes ${print.quantity(loads.year.value.heating.energy, 'energy')} of heat and ${print.quantity(loads.year.value.cooling.sensible, 'energy')} of cooling.`,
    );
  const first = equipment?.ranking.find((r) => r.holds === true);
  if (equipment && equipment.ranking.length > 1)
    lines.push(
      first
        ? `Of the candidates “${equipment.candidates[first.id]?.name}” comes first.`
        : 'None of the candidates holds that night alone.',
    );
  return lines.flatMap((l) => wrap(l, width));
}

function holdPointLines(holdPoint: HoldPoint, plan: Plan, paint: Paint, all: boolean): string[] {
  const here = plan.holdPoints.find((h) => h.holdPoint === holdPoint);
  if (!here || here.findings.length === 0) return [];
  const found = here.findings.flatMap((id) => plan.findings.filter((f) => f.id === id));
  const open = found.filter((f) => f.status !== 'ok');
  const fine = found.length - open.length;
  const shown = all ? found : open;
  return [
    '',
    paint(titles[holdPoint], 'bold'),
    ...shown.flatMap((f, i) =>
      findingLines(
        f,
        paint,
        !shown.slice(0, i).some((before) => before.caution === f.caution && before.status !== 'ok'),
      ),
    ),
    ...(fine > 0 && !all ? [`  ${paint('+', 'green')} ${fine} more ${fine === 1 ? 'is' : 'are'} fine.`] : []),
  ];
}

/** A caution that stands just above already is not said twice. */
export function findingLines(f: Finding, paint: Paint, withCaution: boolean): string[] {
  const { mark, word, colour } = marks[f.status];
  const [head = '', ...more] = wrap(`${word}: ${f.what}`, width - 4, '', '');
  const lines = [
    `  ${paint(mark, colour)} ${paint(word, colour)}${head.slice(word.length)}`,
    ...more.map((l) => `    ${l}`),
  ];
  if (withCaution && f.caution !== undefined && f.status !== 'ok')
    lines.push(...wrap(`Caution: ${f.caution}`, width, '      ', '      '));
  if (f.status !== 'ok') lines.push(...wrap(`Mend: ${f.mend}`, width, '      ', '      '));
  return lines;
}

function counts(plan: Plan): string[] {
  const n = (status: Status) => plan.findings.filter((f) => f.status === status).length;
  return wrap(
    `${n('fails')} fail, ${n('tight')} tight, ${n('unknown')} unknown, ${n('ok')} fine. Unknown is not fine. Local code, the maker’s instructions and licensed practice stand above all of this.`,
    width,
  );
}
