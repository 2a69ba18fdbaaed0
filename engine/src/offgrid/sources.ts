import type { Sources } from '../plan/source.ts';

export const sources: Sources = {
  project: { title: 'Entered in the project', standing: 'project' },
  'power.cell-exponential': {
    title: 'Sandia photovoltaic array performance model, cell temperature',
    edition: '2004',
    standing: 'paper',
  },
  'power.cell-linear': { title: 'Faiman, temperature of modules in the field', edition: '2008', standing: 'paper' },
  'power.cell-nominal': { title: 'Nominal operating cell temperature, IEC 61215', standing: 'from memory' },
  'power.module': { title: 'PVWatts manual, version 5: power by light and temperature', standing: 'paper' },
  'power.single-diode': { title: 'De Soto, Klein and Beckman, one-diode model', edition: '2006', standing: 'paper' },
  'power.incidence': {
    title: 'Martin and Ruiz, light lost at the glass by angle',
    edition: '2001',
    standing: 'paper',
  },
  'power.rows': { title: 'Shadow of one row on the next: geometry', standing: 'definition' },
  'power.inverter': { title: 'PVWatts manual, version 5: efficiency of an inverter by load', standing: 'paper' },
  'power.snow': { title: 'Marion and others, snow that slides off panels', edition: '2013', standing: 'from memory' },
  'power.lithium-rates': {
    title: 'Operation manual of a battery system, table of charge modes by temperature',
    standing: 'maker',
  },
  'power.peukert': { title: 'Peukert, current and capacity of lead batteries', standing: 'definition' },
  'power.cold-capacity': {
    title: 'A maker’s storage note for lithium; IEEE 485 usage for lead',
    standing: 'from memory',
  },
  'power.ageing': {
    title: 'Common practice, no source: a battery ends by its cycles or by its years, whichever come first',
    standing: 'common practice',
  },
  'power.fuel': {
    title: 'Skarstein and Uhlen, Wind Engineering 13: fuel of diesel sets',
    edition: '1989',
    standing: 'from memory',
  },
  'power.engine-air': {
    title: 'Common practice, no source: 3.5 % less for each 300 m above 300 m, 1 % for each 5.5 K above 25 °C',
    standing: 'common practice',
  },
  'power.handbook': {
    title: 'Stand-Alone Photovoltaic Systems: A Handbook of Recommended Design Practices, Sandia',
    edition: '1995',
    standing: 'handbook',
  },
  'offgrid.cell-mass': {
    title: 'Common practice, no source: 8 kg of lithium cells, 28 kg of lead, for each kWh',
    standing: 'common practice',
  },
  'offgrid.lead-rates': {
    title: 'Common practice, no source: lead takes 0.15 and gives 0.25 of its capacity an hour',
    standing: 'common practice',
  },
  'offgrid.usable': {
    title:
      'Common practice, no source: nine tenths of lithium iron phosphate are used, half of lead, eight tenths of others',
    standing: 'common practice',
  },
  'offgrid.heaters': {
    title:
      'Common practice, no source: the crankcase heater runs while the unit rests below 10 °C, the pan’s while it heats below 2 °C',
    standing: 'common practice',
  },
  'offgrid.fire': {
    title:
      'Common practice, no source: a fire is fed as its room asks, to half a degree below what is wanted; nobody has the unit cool within a day of a fire',
    standing: 'common practice',
  },
  'offgrid.household': {
    title: 'Common practice, no source: household use by hour, a small morning and a larger evening peak',
    standing: 'common practice',
  },
  'offgrid.learned-household': {
    title: 'Definition: what a log showed stands in the place of what was entered, by day and by the hour of the day',
    standing: 'definition',
  },
  'offgrid.warm-box': {
    title: 'Common practice, no source: a box with 50 mm of foam loses 2 W/K; a heater of 150 W in it',
    standing: 'common practice',
  },
  'offgrid.heat-hours': {
    title: 'Common practice, no source: a day a year more than 3 K too cold can be bridged',
    standing: 'common practice',
  },
  'offgrid.without-generator': {
    title: 'Common practice, no source: a week a year more than 3 K too cold if one engine does not start',
    standing: 'common practice',
  },
  'offgrid.generator-hours': {
    title: 'Common practice, no source: small sets want a large service after 250 to 500 hours',
    standing: 'common practice',
  },
  'offgrid.low-load': {
    title: 'Common practice, no source: a diesel below three tenths of its load for long soots up',
    standing: 'common practice',
  },
  'offgrid.dark-days': {
    title: 'Common practice, no source: two days without sun with a generator at hand, three without',
    standing: 'common practice',
  },
  'offgrid.winters': {
    title:
      'Common practice, no source: in no more than one winter of ten a day without heat, or a week if the engine does not start',
    standing: 'common practice',
  },
  'offgrid.recorded': {
    title:
      'Common practice, no source: in no more than one recorded winter of ten a day without heat, or a week if the engine does not start',
    standing: 'common practice',
  },
  'offgrid.standing': {
    title: 'Common practice, no source: what never rests stays below a quarter of winter’s electricity',
    standing: 'common practice',
  },
  'offgrid.cold-cells': {
    title: 'Operation manual of a battery system: no charge below 0 °C, two more sheets agree',
    standing: 'maker',
  },
  'offgrid.battery-life': {
    title: 'Common practice, no source: a battery should outlast ten years',
    standing: 'common practice',
  },
  'offgrid.empty-nights': {
    title: 'Common practice, no source: a few nights a year on which the battery gives out',
    standing: 'common practice',
  },
  'offgrid.control': {
    title: 'Common practice, no source: what saves less than a tenth of the fuel is hardly worth a change of habits',
    standing: 'common practice',
  },
  'offgrid.foresight': {
    title: 'Definition: least cost of a linear programme that knows the year, proved by a bound from its prices',
    standing: 'definition',
  },
  'offgrid.comfort-band': {
    title: 'Common practice, no source: 2 K warmer to hold heat and 1 K cooler are borne without complaint',
    standing: 'common practice',
  },
  'offgrid.simple-rule': {
    title:
      'Common practice, no source: 1 K warmer from a charge of 95 % with sun turned away, the generator off from 40 % where the sun that comes gives half a day’s use',
    standing: 'common practice',
  },
  'offgrid.fade': {
    title:
      'Common practice, no source: age and use each wear evenly, both count, and at the end of its stated life four fifths of the energy are left; loss grows by half meanwhile',
    standing: 'common practice',
  },
  'helps.costs': {
    title: 'Common practice, no source: prices of panels, batteries, generators, fuel, boxes, chargers and stoves',
    standing: 'common practice',
  },
  'helps.steps': { title: 'Steps chosen here, of a size one buys or does at once', standing: 'definition' },
  'helps.left-undone': {
    title: 'Common practice, no source: what fuel pays back within five years is worth doing',
    standing: 'common practice',
  },
  'helps.unit-choice': {
    title: 'Common practice, no source: fifty hours of generator a year are worth another unit',
    standing: 'common practice',
  },
  'grid.dear-hours': {
    title: 'Common practice, no source: a quarter of the bill for dear hours and highest power is worth looking at',
    standing: 'common practice',
  },
  'grid.outage': {
    title: 'Common practice, no source: most outages end within eight hours; storms bring longer ones',
    standing: 'common practice',
  },
};
