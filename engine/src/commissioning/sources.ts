import type { Source, Sources } from '../plan/source.ts';
import { logSources } from './logs/sources.ts';

const practice = (title: string): Source => ({
  title: `Common practice, no source: ${title}`,
  standing: 'common practice',
});
const invented = (title: string): Source => ({
  title: `Invented for this program, no source: ${title}`,
  standing: 'common practice',
});

export const sources: Sources = {
  project: { title: 'Entered in the project', standing: 'project' },
  'commissioning.first': practice('static pressure, power, supply and return air at the first start'),
  'commissioning.steady': {
    title: 'California Residential Appendix RA3.2: readings after 15 minutes of steady running',
    edition: '2008',
    standing: 'standard',
  },
  'commissioning.methods': practice(
    '3 and 5 % for a water gauge, 10 and 20 % for a bag, 15 % and less for hood and vane',
  ),
  'commissioning.bag': {
    title:
      'I. Walker, C. Wray et al.: hoods at house grilles err by 20 to 30 % (Lawrence Berkeley 51550, as quoted by others)',
    edition: '2002',
    standing: 'paper',
  },
  'commissioning.bag-times': {
    title:
      'Canada Mortgage and Housing Corporation’s bag test, as pages of a home repair writer and Home Energy (2002) print it',
    standing: 'handbook',
  },
  'commissioning.verdict': invented(
    'good from 90 % inside the band, off below 8.5 %, improvised flow off from three readings on',
  ),
  'commissioning.bands': practice('20 % for pressures and flows, 15 % for power, 2 K, 35 % for water'),
  'commissioning.doubts': practice(
    '15 % of friction, 6 % of a blower’s table, 5 % of capacity and power, 30 % of leakage',
  ),
  'commissioning.priors': invented('chances of causes before anything is read'),
  'commissioning.looks': invented('chances of seeing a fault that is there, or that is not'),
  'commissioning.charge': {
    title: 'Loss of capacity and power with missing refrigerant, of the size that papers on residential units report',
    standing: 'from memory',
  },
  'commissioning.slow-blower': {
    title: 'Fan laws: flow as speed, pressure as its square, power as its cube',
    standing: 'definition',
  },
  'commissioning.causes': { title: 'Bayes’ rule with normal errors; severities summed over', standing: 'definition' },
  'commissioning.one-kind': invented('one kind of reading alone makes no cause likelier than 80 %'),
  'commissioning.shares': {
    title: 'A share of a sum cancels what all readings of it have in common',
    standing: 'definition',
  },
  'commissioning.balancing': invented(
    'shares good to 7 % before dampers are set by them, runs 0.6 to 1.8 times as drawn, 15 % at the check',
  ),
  'commissioning.base': practice('a small house draws up to 1 kW by itself, and up to 3 kW with something large on'),
  'commissioning.night': practice('ten hours from evening to morning'),
  'commissioning.heating-test': practice('heating is read 5 K or more below the balance temperature'),
  'commissioning.each-season': practice('three readings of the first start repeated each season'),
  'commissioning.since': practice('15 % or 2 K of change, like for like, is looked into'),
  'commissioning.upkeep': practice('a look after a week, the filter every month, the whole in April and October'),
  'climate.months': { title: 'Months of the climate, as entered or from its year', standing: 'project' },
  ...logSources,
};
