import { inOrder } from '@kneewall/project';
import type { Job } from '../../jobs/job.ts';
import { attempt, type Outcome, required, unresolved } from '../../plan/outcome.ts';
import { scenario } from '../../plan/scenario.ts';
import { asBuilt, type Input } from '../asBuilt.ts';
import type { Visit, VisitBalancing } from '../result.ts';
import { balancingJob } from './balancingJob.ts';
import { flowsRead } from './flowsRead.ts';

/** What a visit's flows lack to balance by, or the job that says which dampers to move. Undefined where no flows were read. */
export function askBalancing(input: Input, visit: Visit): { asked: VisitBalancing; job?: Job } | undefined {
  const { air } = input.upstream;
  if (!air.model.ok || visit.aside || visit.doorsShut) return undefined;
  const { sections, terminals } = air.model.value;
  const supplies = new Set(sections.flatMap((x) => (x.side === 'supply' ? [x.id] : [])));
  const registers = terminals.flatMap((t) => (supplies.has(t.section) ? [t.id] : []));
  const read = flowsRead(visit.taken, registers);
  if (!read) return undefined;
  const job = attempt(() => {
    if (read.lacking.length > 0) return unresolved('missing', 'readings');
    if (read.mixed !== undefined) return unresolved('missing', `readings.${read.mixed}.means`);
    if (read.blocked) return unresolved('missing', `readings.${read.blocked.reading}.value`);
    if (read.again) return unresolved('missing', `readings.${read.again.reading}.repeats`);
    const { system } = asBuilt(input, visit);
    const { staticMost } = system.blower;
    return balancingJob({
      air: system.air,
      drawn: drawnDampers(input),
      noted: visit.dampers,
      shares: required(wantedShares(input)),
      read: read.flows,
      common: read.common,
      alone: read.alone,
      ...(staticMost === undefined ? {} : { staticMost }),
    });
  });
  if (!job.ok) return { asked: { read, found: job } };
  return { asked: { read, found: { ok: false, because: 'pending', paths: [job.value.key] } }, job: job.value };
}

/** What part of the air each room is to get in the season that asks more of the house. */
const wantedShares = ({ upstream }: Input): Outcome<Readonly<Record<string, number>>> =>
  attempt(() => {
    const balance = required(upstream.air.balance);
    const { rooms } = required(balance[balance.governs]);
    return Object.fromEntries(rooms.map((r) => [r.room, r.share]));
  });

/** Degrees from open of the dampers that are drawn, by section. */
function drawnDampers({ project }: Input): Record<string, number> {
  const s = scenario();
  return Object.fromEntries(
    inOrder(project.routes.ducts.sections).flatMap(([id, section]) => {
      const damper = inOrder(section.fittings).find(([, f]) => s.choice(f.kind) === 'damper');
      return damper ? [[id, s.maybe(damper[1].angle) ?? 0]] : [];
    }),
  );
}
