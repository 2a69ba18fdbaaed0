import { type Plan, type Winters, wintersKind } from '@kneewall/engine';
import { monthNames } from '@kneewall/project';
import { FoldedTable } from '../../look/FoldedTable.tsx';
import { Scroll } from '../../look/Scroll.tsx';
import { Sheet } from '../../look/Sheet.tsx';
import { Quantity } from '../../quantity/Quantity.tsx';
import { JobOffer } from './JobOffer.tsx';
import { OutcomeOr } from './OutcomeOr.tsx';
import { PowerSizesTable } from './PowerSizesTable.tsx';
import { RecordedSheet } from './RecordedSheet.tsx';
import { SizeLines } from './SizeLines.tsx';

/** House, unit and power through twenty winters: how often it fails, and what other sizes would do. */
export function WintersSheets({ season }: { season: Plan['season'] }) {
  const { winters, power } = season;
  return (
    <>
      <Sheet title="Twenty winters">
        {!winters.ok && winters.because === 'pending' ? (
          <JobOffer kind={wintersKind} name="Twenty winters">
            One ordinary year states energy and promises nothing. Twenty winters, made so that cold, dull and calm days
            keep together as weather does, tell in how many of them the house grows cold, and what fuel the hard one
            asks. It takes a minute or two.
          </JobOffer>
        ) : (
          <OutcomeOr outcome={winters} what="Twenty winters">
            {(found) => <Found winters={found} />}
          </OutcomeOr>
        )}
      </Sheet>
      <RecordedSheet season={season} />
      <Sheet title="Other sizes">
        {winters.ok ? (
          <Sizes winters={winters.value} />
        ) : (
          <OutcomeOr outcome={power} what="What other sizes would do">
            {(year) => <PowerSizesTable sizes={year.sizes} />}
          </OutcomeOr>
        )}
      </Sheet>
    </>
  );
}

/** So many of the winters pass a number of hours. */
const over = ({ winters }: Winters, column: 'cold' | 'aloneCold', hours: number): number =>
  winters.filter((w) => w[column] > hours).length;

const count = (n: number, of: number): string => (n === 0 ? `none of ${of}` : `${n} of ${of}`);

function Found({ winters: all }: { winters: Winters }) {
  const { tenths, winters, generator } = all;
  const of = winters.length;
  return (
    <>
      <p className="lead">
        In {count(over(all, 'cold', 24), of)} winters the house is too cold for more than a day for want of power
        {generator && (
          <>; if the generator never starts, in {count(over(all, 'aloneCold', 168), of)} for more than a week</>
        )}
        .
      </p>
      <Scroll label="The middle winter and one of ten">
        <table className="table">
          <thead>
            <tr>
              <th scope="col">In a winter, {months(all)}</th>
              <th scope="col">Middle winter</th>
              <th scope="col">One in ten, or worse</th>
            </tr>
          </thead>
          <tbody>
            <Row name="Hours without heat" of={tenths.cold} />
            {generator && <Row name="The same if the generator never starts" of={tenths.aloneCold} />}
            {generator && <Row name="Hours of the generator" of={tenths.generatorHours} />}
            {generator && (
              <tr>
                <th scope="row">Fuel</th>
                <td>
                  <Quantity value={tenths.litres.median / 1000} kind="volume" significant={2} />
                </td>
                <td>
                  <Quantity value={tenths.litres.oneInTen / 1000} kind="volume" significant={2} />
                </td>
              </tr>
            )}
            <Row name="Longest dark spell, days" of={tenths.longestDark} />
            <Row name="Longest got through without generator or want, days" of={tenths.survivedDark} />
            <Row name="Mornings too cold to charge" of={tenths.coldMornings} />
          </tbody>
        </table>
      </Scroll>
      <EachWinter winters={all} />
      <p className="field-help">
        Without heat: more than <Quantity value={3} kind="temperature-difference" /> too cold while with all the power
        it would take the house is not. A dark spell: days on end with sun for less than half of what is drawn. The
        winters are made, not recorded. Their spells within a month are held against weather files; how far months
        differ from year to year is in part common practice, and how rare the rarest winter is nobody has tested.
      </p>
    </>
  );
}

const months = ({ months: all }: Winters): string => `${monthNames[all[0] ?? 9]} to ${monthNames[all.at(-1) ?? 3]}`;

function Row({ name, of }: { name: string; of: Winters['tenths']['cold'] }) {
  return (
    <tr>
      <th scope="row">{name}</th>
      <td>{Math.round(of.median)}</td>
      <td>{Math.round(of.oneInTen)}</td>
    </tr>
  );
}

function EachWinter({ winters: { winters, generator } }: { winters: Winters }) {
  const columns = ['Winter', 'Mean outdoors', 'Hours without heat', ...(generator ? ['Generator, hours', 'Fuel'] : [])];
  return (
    <FoldedTable title="Each winter in numbers" columns={[...columns, 'Longest dark spell, days']}>
      {winters.map((w, n) => (
        // Winters have no name but their number.
        // biome-ignore lint/suspicious/noArrayIndexKey: the number is the name
        <tr key={n}>
          <th scope="row">{n + 1}</th>
          <td>
            <Quantity value={w.outdoor} kind="temperature" />
          </td>
          <td>{Math.round(w.cold)}</td>
          {generator && <td>{Math.round(w.generatorHours)}</td>}
          {generator && (
            <td>
              <Quantity value={w.litres / 1000} kind="volume" significant={2} />
            </td>
          )}
          <td>{Math.round(w.longestDark)}</td>
        </tr>
      ))}
    </FoldedTable>
  );
}

/** Rows and columns of the table: once a fifth, then from once to four times what is there. */
const shown = [1, 4, 9, 14, 19];

function Sizes({ winters: { sizes } }: { winters: Winters }) {
  const what = sizes.of === 'generator' ? 'Hours of the generator' : 'Hours in which power is short';
  return (
    <>
      <p>{what} in a winter, by the panels (across) and the battery (up). Along a line they are the same.</p>
      <div className="size-lines-pair">
        <SizeLines sizes={sizes} hours={sizes.median} name="In the middle winter" />
        <SizeLines sizes={sizes} hours={sizes.oneInTen} name="In one winter of ten" />
      </div>
      <FoldedTable
        title={`${what} in one winter of ten, in numbers`}
        columns={['Battery', ...shown.map((a) => `panels × ${(sizes.panels[a] ?? 0) / sizes.own.panels}`)]}
      >
        {shown.map((b) => (
          <tr key={b}>
            <th scope="row">
              <Quantity value={sizes.battery[b] ?? 0} kind="energy" />
            </th>
            {shown.map((a) => (
              <td key={a}>
                {Math.round(sizes.oneInTen[b]?.[a] ?? 0)}
                {a === 4 && b === 4 && ' (yours)'}
              </td>
            ))}
          </tr>
        ))}
      </FoldedTable>
      <p className="field-help">
        Replayed demand: the house is not cooled by a flat battery here. It is given all the heat it wants, and what it
        draws is served by other sizes under the same rules, so this says what a size would spare.
      </p>
    </>
  );
}
