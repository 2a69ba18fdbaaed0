import type { CommissioningResult } from '@kneewall/engine';
import { moveWords, printerFor } from '@kneewall/engine';
import { Scroll } from '../../look/Scroll.tsx';
import { Sheet } from '../../look/Sheet.tsx';
import { Quantity } from '../../quantity/Quantity.tsx';
import { useSession, useUnits } from '../../services.ts';
import { OutcomeOr } from './OutcomeOr.tsx';

type Visits = CommissioningResult['visits'];
type Told = NonNullable<Visits[string]['balancing']>;
type Balancing = Extract<Told['found'], { ok: true }>['value'];

/** For each visit with flows of registers: which dampers to move, and what to expect after that. */
export default function BalancingSheets({ visits }: { visits: Visits }) {
  const told = Object.values(visits).flatMap(({ id, name, balancing }) => (balancing ? [{ id, name, balancing }] : []));
  return told.map(({ id, name, balancing }) => (
    <Sheet key={id} title={`Dampers to move, by “${name}”`}>
      <OutcomeOr outcome={balancing.found} what="Which dampers to move">
        {(found) => <Moves found={found} />}
      </OutcomeOr>
    </Sheet>
  ));
}

const lead = {
  good: 'Every room is within 10 % of its share. Leave the dampers; mark each handle where it stands.',
  move: 'One trip: set these, in this order, then mark each handle.',
  short: 'Dampers alone do not bring every room within 10 % of its share. These come nearest.',
} as const;

function Moves({ found }: { found: Balancing }) {
  const print = printerFor(useUnits());
  const { word, moves, staticNow, staticThen } = found;
  return (
    <>
      <p className="lead">{lead[word]}</p>
      {moves.length > 0 && (
        <ol>
          {moves.map((m, i) => (
            <li key={m.place}>
              {i + 1}. “{m.name}”{m.inAttic ? ', attic' : ''}:{' '}
              {moveWords(
                {
                  where: m.at,
                  opens: m.after < m.before,
                  ...(m.from === undefined || m.to === undefined ? {} : { from: m.from, to: m.to }),
                },
                print,
              )}
            </li>
          ))}
        </ol>
      )}
      {moves.some((m) => m.inAttic) && (
        <p className="caution">
          Hot attic: short turns, water, somebody below. Boards across joists; never step between them.
        </p>
      )}
      <Rooms found={found} />
      {moves.length > 0 && <Registers found={found} />}
      {moves.length > 0 && (
        <p>
          Pressure across the air handler goes from <Quantity value={staticNow} kind="pressure" /> to{' '}
          <Quantity value={staticThen} kind="pressure" />.
        </p>
      )}
      <p className="field-help">
        Degrees are from open, of a round blade by a published table; yours may stand otherwise, so read again. Never
        shut a damper altogether.
      </p>
    </>
  );
}

function Rooms({ found: { rooms } }: { found: Balancing }) {
  const named = useSession((s) => s.project.house?.rooms);
  return (
    <Scroll label="Shares of the rooms">
      <table className="table">
        <thead>
          <tr>
            <th scope="col">Room</th>
            <th scope="col">Gets of its share</th>
            <th scope="col">After the moves</th>
          </tr>
        </thead>
        <tbody>
          {rooms.map((r) => (
            <tr key={r.room}>
              <th scope="row">{named?.[r.room]?.name ?? r.room}</th>
              <td>
                <Quantity value={r.now} kind="fraction" />
              </td>
              <td>
                <Quantity value={r.after} kind="fraction" />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </Scroll>
  );
}

function Registers({ found: { registers, checks } }: { found: Balancing }) {
  const named = useSession((s) => s.project.routes?.ducts?.terminals);
  const nameOf = (id: string) => named?.[id]?.name ?? id;
  return (
    <>
      <p>
        Then read {checks.map((id) => `“${nameOf(id)}”`).join(' and ')} once more, the same way. Within 15 % of what is
        expected no second trip is needed; else read all registers again.
      </p>
      <Scroll label="What to expect at each register">
        <table className="table">
          <thead>
            <tr>
              <th scope="col">Register</th>
              <th scope="col">Was read</th>
              <th scope="col">Expect then</th>
            </tr>
          </thead>
          <tbody>
            {registers.map((r) => (
              <tr key={r.register}>
                <th scope="row">
                  {nameOf(r.register)}
                  {checks.includes(r.register) ? ' (read this)' : ''}
                </th>
                <td>
                  <Quantity value={r.read} kind="flow" />
                </td>
                <td>
                  <Quantity value={r.after} kind="flow" />
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </Scroll>
    </>
  );
}
