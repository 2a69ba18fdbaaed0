import type { Help, Plan, PowerHelps } from '@kneewall/engine';
import { Scroll } from '../../look/Scroll.tsx';
import { Sheet } from '../../look/Sheet.tsx';
import { Quantity, QuantityRange } from '../../quantity/Quantity.tsx';
import { useSession, useUnits } from '../../services.ts';
import { helpWords } from './helpWords.ts';
import { JobOffer } from './JobOffer.tsx';
import { OutcomeOr } from './OutcomeOr.tsx';

/** Single changes to house, sun, battery and generator, the cheapest hour saved first. */
export function PowerHelpsSheet({ outcome, own }: { outcome: Plan['season']['powerHelps']; own: boolean }) {
  return (
    <Sheet title="What would help">
      {!outcome.ok && outcome.because === 'pending' ? (
        <JobOffer kind="coupling/power-helps" name="What would help">
          More panels, battery, a warmer place for it, sealing, insulation, a cooler house, a stove and other units:
          each through your whole year. It starts by itself after the year.
        </JobOffer>
      ) : (
        <OutcomeOr outcome={outcome} what="What would help">
          {(helps) => <Helps helps={helps} own={own} />}
        </OutcomeOr>
      )}
    </Sheet>
  );
}

function Helps({ helps, own }: { helps: PowerHelps; own: boolean }) {
  const project = useSession((s) => s.project);
  const units = useUnits();
  const title = own
    ? 'Each alone, the cheapest hour of generator saved first'
    : 'Each alone, the cheapest hour of heat first';
  return (
    <>
      <OneKilowatt helps={helps} own={own} />
      <Scroll label={title}>
        <table className="table">
          <caption>{title}</caption>
          <thead>
            <tr>
              {columnsFor(own).map((column) => (
                <th key={column} scope="col">
                  {column}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {helps.ranked.map((help) => (
              <tr key={`${help.kind} ${help.of ?? ''}`}>
                <th scope="row">
                  {helpWords(help, project, units)}
                  {help.kind === 'stove-days' && (
                    <>
                      {' '}
                      (it gives <Quantity value={help.year.stove} kind="energy" significant={2} />)
                    </>
                  )}
                </th>
                <Saved help={help} base={helps.base} own={own} />
                <td>{help.cost ? <Money help={help} /> : 'not known'}</td>
                <td>{help.perHour === undefined ? '–' : help.perHour.toFixed(help.perHour < 10 ? 1 : 0)}</td>
                {own && <td>{paidBack(help)}</td>}
              </tr>
            ))}
          </tbody>
        </table>
      </Scroll>
      <p className="field-help">
        Each change is tried alone: after one is done the others save something else. What leaves the house too cold for
        more than a day a year stands last. A minus means that it takes more. A larger battery can mean more hours,
        since it takes longer to fill. Money is yours: prices as you entered them, else common practice without a
        source, wide as it is. The stove is tended by hand; its wood is not counted.
      </p>
    </>
  );
}

const columnsFor = (own: boolean): string[] =>
  own
    ? [
        'What',
        'Generator runs less',
        'Fuel less',
        'House too cold',
        'Costs about',
        'Money for each hour',
        'Paid back in',
      ]
    : ['What', 'Heat held back less', 'House too cold', 'Costs about', 'Money for each hour'];

function Saved({ help, base, own }: { help: Help; base: PowerHelps['base']; own: boolean }) {
  return (
    <>
      <td>{Math.round(own ? help.hours : base.held - help.year.held)} h</td>
      {own && (
        <td>
          <Quantity value={help.litres / 1000} kind="volume" significant={2} />
        </td>
      )}
      <td>{Math.round(help.year.cold)} h</td>
    </>
  );
}

function Money({ help: { cost } }: { help: Help }) {
  if (!cost || (cost.low === 0 && cost.high === 0)) return 'nothing';
  if (cost.likely < 0) return `${Math.round(-cost.likely)} less`;
  return <QuantityRange range={cost} kind="money" />;
}

/** `3 to 12`, in years; what costs nothing is paid at once. */
function paidBack({ payback, cost }: Help): string {
  if (!payback) return '–';
  if (cost && cost.high <= 0) return 'at once';
  const years = (x: number): string => (x > never ? 'never' : x < 10 ? x.toFixed(1) : String(Math.round(x)));
  if (payback.low > never) return 'never';
  return `${years(payback.low)} to ${years(payback.high)}`;
}

/** Years beyond which nobody waits. */
const never = 60;

/** What one more kilowatt of panels buys where it buys most. */
function OneKilowatt({ helps, own }: { helps: PowerHelps; own: boolean }) {
  const project = useSession((s) => s.project);
  const [best] = helps.ranked
    .filter((h) => h.kind === 'panels' || h.kind === 'steep')
    .toSorted((a, b) => b.hours - a.hours || a.year.held - b.year.held);
  if (!best) return null;
  const where =
    best.kind === 'steep'
      ? `on a rack at ${Math.round(best.amount ?? 0)}°`
      : `on “${project?.power?.arrays?.[best.of ?? '']?.name ?? best.of}”`;
  return (
    <p className="lead">
      One more kilowatt of panels buys most {where}:{' '}
      {own ? (
        <>
          {Math.round(best.hours)} hours of generator and{' '}
          <Quantity value={best.litres / 1000} kind="volume" significant={2} /> of fuel less a year.
        </>
      ) : (
        <>{Math.round(helps.base.held - best.year.held)} hours a year less in which the heat is held back.</>
      )}
    </p>
  );
}
