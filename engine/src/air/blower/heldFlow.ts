import type { BlowerModel } from '../../equipment/result.ts';
import { fanPower } from '../../physics/network/index.ts';
import { pressureRise } from '../../physics/sound/index.ts';
import type { AirFlows, AirModel } from '../ductwork.ts';

/** Share of its set flow below which a blower no longer holds it. Source: `equipment.constant-airflow`. */
const held = 0.95;

/** dB of the same air against more pressure. Source: `sound.fan`. */
const louder = (now: number, easy: number) =>
  easy > 0 && now > easy ? { louder: Math.round(pressureRise(now, easy)) } : {};

/**
 * For the words about a blower that holds its airflow: the flow it is set to, whether it still holds it, and W by its
 * table, now and where it has least to overcome. Nothing of other kinds: theirs move less air instead.
 */
export function heldFlow(
  blower: BlowerModel | undefined,
  { blower: table }: AirModel,
  { flow, staticPressure }: AirFlows,
): Readonly<Record<string, number | string>> {
  if (blower?.kind !== 'airflow') return {};
  const set = table.points.at(-1)?.flow ?? 0;
  const easy = [...table.points].reverse().find((p) => p.power !== undefined);
  const now = fanPower(table.points, flow);
  return {
    set,
    holds: flow >= held * set ? 1 : 0,
    ...(now === undefined || easy?.power === undefined
      ? {}
      : { watts: now, easy: easy.power, at: easy.pressure, ...louder(staticPressure, easy.pressure) }),
  };
}
