import { changeOf, changeSuspect, dayWords, type LogAnswers } from '@kneewall/engine';
import { Quantity, QuantityRange } from '../../../quantity/Quantity.tsx';

/** From when the same takes more or less; or how small a change this log would hide. */
export function LogChange({ change }: { change: NonNullable<LogAnswers['change']> }) {
  const { day, dayFrom, dayTo, share, low, high, chance, least } = change;
  if (chance > 0.05)
    return (
      <>
        nothing that chance would not show; under about <Quantity value={least} kind="fraction" /> it may be hidden
      </>
    );
  const size = share > 0 ? { low, likely: share, high } : { low: -high, likely: -share, high: -low };
  return (
    <>
      since {dayWords(day)}: <QuantityRange range={size} kind="fraction" /> {changeOf(change)}. {changeSuspect(change)}
      {dayTo > dayFrom && (
        <span className="field-help">
          {' '}
          The day lies between {dayWords(dayFrom)} and {dayWords(dayTo)}.
        </span>
      )}
    </>
  );
}
