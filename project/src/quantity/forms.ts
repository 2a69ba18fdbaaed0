import { angleReading } from './angle.ts';
import { readFeetInches } from './feetInches.ts';
import { findUnit, type QuantityKind } from './kinds.ts';
import { metreReadings, readMetres } from './metres.ts';
import { decimalPattern } from './number.ts';
import { clockReadings, readTimeOfDay } from './timeOfDay.ts';
import { wireArea } from './wire.ts';

/** Forms that are not a number and a unit. */
export function specialReading(written: string, kind: QuantityKind): number | undefined {
  if (kind === 'length') return readFeetInches(written) ?? readMetres(written);
  if (kind === 'angle') return angleReading(written);
  if (kind === 'time-of-day') return readTimeOfDay(written);
  if (kind === 'wire-size') return wireArea(written);
  if (kind === 'energy') return chargeAtVoltage(written);
  return kind === 'r-value' ? namedResistance(written) : undefined;
}

/** Such forms that may mean two things, each in words that parse. */
export function specialReadings(written: string, kind: QuantityKind): readonly string[] {
  if (kind === 'length') return metreReadings(written);
  if (kind === 'time-of-day') return clockReadings(written);
  return [];
}

/** `560 Ah at 51.2 V` */
function chargeAtVoltage(written: string): number | undefined {
  const m = new RegExp(`^(${decimalPattern}) ?Ah ?(?:at|@|x|×|\\*) ?(${decimalPattern}) ?V$`, 'i').exec(written);
  return m ? (Number(m[1]) * Number(m[2])) / 1000 : undefined;
}

/** `R-19`, `R19`, `RSI 3.3` */
function namedResistance(written: string): number | undefined {
  const m = new RegExp(`^(RSI|R)[ -]?(${decimalPattern})$`, 'i').exec(written);
  const unit = m ? findUnit('r-value', (m[1] ?? '').toUpperCase()) : undefined;
  return m && unit ? Number(m[2]) * unit.factor : undefined;
}
