import type { WorkCalendar } from '../physics/schedule/work.ts';
import type { WorkFrame } from './result.ts';

/** When work may be done at all, in the attic, with noise, with power or water. */
export function calendarsOf(frame: WorkFrame): WorkCalendar[] {
  const heat = frame.attic.flatMap(({ from, minutes }) =>
    minutes.map((minutesAnHour, h) => ({ from: from + 60 * h, to: from + 60 * h + 60, minutesAnHour })),
  );
  const off = (what: 'power' | 'water') =>
    frame.off
      .filter((o) => o.what === what && o.to > o.from && o.to > 0)
      .map(({ from, to }) => ({ from: Math.max(0, from), to }));
  return [
    { id: 'free', open: frame.windows.map(({ from, to }) => ({ from, to })) },
    { id: 'attic', heat: heat.filter((h) => h.minutesAnHour < 60) },
    ...(frame.quiet ? [{ id: 'quiet', shut: quietSpans(frame, frame.quiet) }] : []),
    ...(['power', 'water'] as const).flatMap((id) => (off(id).length > 0 ? [{ id, shut: off(id) }] : [])),
  ];
}

/** The quiet hours of every day with a window, the night before it with them. */
function quietSpans({ attic }: WorkFrame, { from, to }: { readonly from: number; readonly to: number }) {
  return attic.flatMap(({ from: day }) =>
    from < to
      ? [{ from: day + from, to: day + to }]
      : [
          { from: day, to: day + to },
          { from: day + from, to: day + 1440 },
        ],
  );
}
