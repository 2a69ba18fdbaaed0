import { source as access } from '../access/measure.ts';
import { source as atticField } from '../attic-field/measure.ts';
import { source as circuit } from '../circuit/measure.ts';
import { source as coil } from '../coil/measure.ts';
import { source as commissioning } from '../commissioning/measure.ts';
import { source as condensate } from '../condensate/measure.ts';
import { source as dispatch } from '../dispatch/measure.ts';
import { source as doors } from '../doors/measure.ts';
import { source as ductFriction } from '../duct-friction/measure.ts';
import { source as ductHeat } from '../duct-heat/measure.ts';
import { source as fanLaws } from '../fan-laws/measure.ts';
import { source as fittings } from '../fittings/measure.ts';
import { source as flexibleDuct } from '../flexible-duct/measure.ts';
import { source as glazing } from '../glazing/measure.ts';
import { source as infiltration } from '../infiltration/measure.ts';
import { source as iso6946 } from '../iso-6946/measure.ts';
import { source as iso13370 } from '../iso-13370/measure.ts';
import { source as iso13788 } from '../iso-13788/measure.ts';
import { source as leakage } from '../leakage/measure.ts';
import { source as lineset } from '../lineset/measure.ts';
import { source as logs } from '../logs/measure.ts';
import { source as networks } from '../networks/measure.ts';
import { source as ownPower } from '../own-power/measure.ts';
import { source as packing } from '../packing/measure.ts';
import { source as panels } from '../panels/measure.ts';
import { source as presentValue } from '../present-value/measure.ts';
import { source as psychrometrics } from '../psychrometrics/measure.ts';
import { source as rcpsp } from '../rcpsp/measure.ts';
import { source as realHouse } from '../real-house/measure.ts';
import { source as registers } from '../registers/measure.ts';
import { source as residentialLoad } from '../residential-load/measure.ts';
import { source as seasonalBins } from '../seasonal-bins/measure.ts';
import { source as seasonalEu } from '../seasonal-eu/measure.ts';
import { source as seasonalUs } from '../seasonal-us/measure.ts';
import { source as sensitivity } from '../sensitivity/measure.ts';
import { source as skyAndGround } from '../sky-and-ground/measure.ts';
import { source as solar } from '../solar/measure.ts';
import { source as standard140 } from '../standard-140/measure.ts';
import { source as syntheticYears } from '../synthetic-year/measure.ts';
import { source as thinAir } from '../thin-air/measure.ts';
import { source as unfolding } from '../unfolding/measure.ts';
import { source as weatherFiles } from '../weather-files/measure.ts';
import { source as winters } from '../winters/measure.ts';
import type { ValidationSource } from './row.ts';

export const sources: readonly ValidationSource[] = [
  psychrometrics,
  solar,
  skyAndGround,
  iso6946,
  iso13370,
  iso13788,
  glazing,
  infiltration,
  ductFriction,
  flexibleDuct,
  fittings,
  fanLaws,
  lineset,
  networks,
  ductHeat,
  doors,
  leakage,
  registers,
  residentialLoad,
  coil,
  condensate,
  access,
  thinAir,
  circuit,
  seasonalUs,
  seasonalEu,
  seasonalBins,
  weatherFiles,
  standard140,
  atticField,
  sensitivity,
  syntheticYears,
  winters,
  logs,
  realHouse,
  panels,
  presentValue,
  ownPower,
  packing,
  unfolding,
  dispatch,
  rcpsp,
  commissioning,
];
