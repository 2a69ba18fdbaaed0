import type { TradeId } from '../trade.ts';
import { choice, group, quantity } from './field.ts';

const amperes = (label: string, spec: { help: string; neededBy: readonly TradeId[] }) =>
  quantity('current', {
    label,
    ...spec,
    plausible: { min: 0.1, max: 120 },
    possible: { min: 0 },
    usually: 'nameplate',
  });

/** What the two nameplates and the wiring diagram say. */
export const electrics = group(
  {
    voltage: quantity('voltage', {
      label: 'Voltage',
      neededBy: ['equipment'],
      plausible: { min: 100, max: 480 },
      possible: { min: 0 },
      usually: 'nameplate',
    }),
    phases: choice({ one: 'Single phase', three: 'Three phase' }, { label: 'Phases', default: 'one' }),
    frequency: quantity('frequency', {
      label: 'Frequency',
      default: 60,
      plausible: { min: 50, max: 60 },
      possible: { min: 0 },
      usually: 'nameplate',
    }),
    powerMost: quantity('electric-power', {
      label: 'Most power drawn, without strips',
      neededBy: ['equipment'],
      plausible: { min: 300, max: 15_000 },
      possible: { min: 0 },
      usually: 'nameplate',
    }),
    startCurrent: quantity('current', {
      label: 'Starting current',
      help: 'Locked-rotor current, LRA on the plate. Inverter-driven units ramp up: then it is no more than the rated current.',
      neededBy: ['circuit'],
      plausible: { min: 1, max: 200 },
      possible: { min: 0 },
      usually: 'nameplate',
    }),
    starts: choice(
      {
        ramps: 'Ramps up: driven by an inverter, variable speed',
        soft: 'Switched on through a soft starter',
        straight: 'Switched straight on: one or two speeds',
      },
      { label: 'How the compressor starts', default: 'ramps' },
    ),
    compressorCurrent: amperes('Compressor current', {
      help: 'Rated-load current, RLA or RLC on the plate of the outdoor unit; the rated input current of an inverter-driven one.',
      neededBy: [],
    }),
    fanCurrent: amperes('Outdoor fan current', {
      help: 'Full-load current, FLA, of the fan motor on the same plate.',
      neededBy: [],
    }),
    ampacityLeast: amperes('Minimum circuit ampacity', {
      help: 'MCA on the plate of the outdoor unit: the wires must carry at least this. Left empty it is worked out from the two currents above.',
      neededBy: ['circuit'],
    }),
    protectionMost: amperes('Maximum protection', {
      help: 'MOP or MOCP on the same plate: breaker or fuse may be this large and no larger. Left empty it is worked out from the two currents above.',
      neededBy: ['circuit'],
    }),
    handler: group(
      {
        fed: choice(
          { outdoor: 'From the outdoor unit, through the cable between them', own: 'By a circuit of its own' },
          { label: 'Air handler gets its power', default: 'outdoor' },
        ),
        current: amperes('Current', {
          help: 'Full-load current on the plate of the air handler.',
          neededBy: [],
        }),
        ampacityLeast: amperes('Minimum circuit ampacity', {
          help: 'On the plate of the air handler, with the strips it really has. Only where it has a circuit of its own.',
          neededBy: ['circuit'],
        }),
        protectionMost: amperes('Maximum protection', {
          help: 'On the same plate.',
          neededBy: ['circuit'],
        }),
      },
      { label: 'Power of the air handler' },
    ),
    between: group(
      {
        conductors: quantity('count', {
          label: 'Conductors, the ground among them',
          help: 'Count the terminals that the wiring diagram joins between the two units: two for power, one or two for the signal, one ground.',
          neededBy: ['circuit'],
          plausible: { min: 2, max: 8 },
          possible: { min: 1 },
          usually: 'nameplate',
        }),
        size: quantity('wire-size', {
          label: 'Size of each',
          help: 'As the installation manual asks: 14 AWG, 16 AWG, 1.5 mm².',
          neededBy: [],
          plausible: { min: 0.2, max: 20 },
          possible: { min: 0.05 },
          usually: 'nameplate',
        }),
        screened: choice({ yes: 'Yes', no: 'No' }, { label: 'Has to be screened', default: 'no' }),
        longest: quantity('length', {
          label: 'Longest it may be',
          neededBy: [],
          plausible: { min: 3, max: 150 },
          possible: { min: 0 },
          usually: 'nameplate',
        }),
      },
      { label: 'Cable between the units, as the maker asks' },
    ),
    strips: quantity('electric-power', {
      label: 'Backup heating strips',
      default: 0,
      plausible: { min: 0, max: 20_000 },
      possible: { min: 0 },
      usually: 'nameplate',
    }),
    standby: quantity('electric-power', {
      label: 'Standby draw',
      default: { low: 5, likely: 15, high: 50 },
      plausible: { min: 0, max: 200 },
      possible: { min: 0 },
      usually: 'nameplate',
    }),
    crankcase: quantity('electric-power', {
      label: 'Crankcase heater',
      default: { low: 0, likely: 30, high: 80 },
      plausible: { min: 0, max: 200 },
      possible: { min: 0 },
      usually: 'nameplate',
    }),
    panHeater: quantity('electric-power', {
      label: 'Drain-pan heater',
      default: { low: 0, likely: 60, high: 150 },
      plausible: { min: 0, max: 400 },
      possible: { min: 0 },
      usually: 'nameplate',
    }),
  },
  { label: 'Nameplate' },
);
