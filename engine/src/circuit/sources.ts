import type { Sources } from '../plan/source.ts';

export const sources: Sources = {
  'circuit.code': {
    title: 'The code that the local authority has adopted, with its changes: it stands above everything here',
    standing: 'maker',
  },
  'circuit.nameplate': { title: 'The nameplate of the unit: it governs over all arithmetic here', standing: 'maker' },
  'circuit.motor-compressor': {
    title:
      'NEC article 440 (440.22, 440.32, 440.33): 1.25 × the compressor’s current and the rest for the wires, 1.75 × and the rest for the protection',
    standing: 'from memory',
  },
  'circuit.standard-sizes': { title: 'NEC 240.6(A): standard sizes of protection', standing: 'from memory' },
  'circuit.small': { title: 'NEC 240.4(D): 15, 20 and 30 A on 14, 12 and 10 AWG', standing: 'from memory' },
  'circuit.continuous': { title: 'NEC 210.20(A): a continuous load counts 125 %', standing: 'standard' },
  'circuit.ampacity': {
    title: 'NEC table 310.16, copper, not more than three current-carrying conductors, 30 °C',
    edition: '2023',
    standing: 'standard',
  },
  'circuit.ampacity-aluminium': { title: 'NEC table 310.16, aluminium', standing: 'from memory' },
  'circuit.ambient': {
    title:
      'NEC table 310.15(B)(1), base 30 °C; the rows above 60 °C from memory, with √((Tc − Ta)/(Tc − 30)) behind them',
    edition: '2023',
    standing: 'standard',
  },
  'circuit.together': { title: 'NEC table 310.15(C)(1): conductors side by side', standing: 'standard' },
  'circuit.roof': { title: 'NEC 310.15(B)(2): 33 K more in a pipe that lies on a roof', standing: 'from memory' },
  'circuit.air-inside': {
    title: 'Common practice, no source: 30 °C at the most inside a lived-in house',
    standing: 'common practice',
  },
  'circuit.terminals': {
    title:
      'NEC 110.14(C): ends at 60 °C up to 100 A unless all are marked 75 °C; 334.80 and 340.80: house and wet-place cable at 60 °C',
    standing: 'from memory',
  },
  'circuit.gauge': { title: 'ASTM B258: diameters of wire gauges', standing: 'definition' },
  'circuit.resistance': {
    title: 'Annealed copper, IEC 60028: 1/58 Ω mm²/m at 20 °C, 0.00393 per K; taken at 75 °C',
    standing: 'from memory',
  },
  'circuit.resistance-aluminium': {
    title: 'Aluminium: 1/35.4 Ω mm²/m at 20 °C, 0.00403 per K; taken at 75 °C',
    standing: 'from memory',
  },
  'circuit.drop': {
    title: 'Ohm’s law out and back; NEC 210.19, informational: 3 % for a branch, 5 % with its feeder',
    standing: 'from memory',
  },
  'circuit.starting': {
    title: 'Common practice, no source: 80 to 85 % of the voltage left while a compressor starts',
    standing: 'common practice',
  },
  'circuit.soft-start': {
    title: 'Common practice, no source: a soft starter takes 50 to 70 % off the starting current',
    standing: 'common practice',
  },
  'circuit.grounding': { title: 'NEC table 250.122, copper', standing: 'from memory' },
  'circuit.grounding-aluminium': { title: 'NEC table 250.122, aluminium', standing: 'from memory' },
  'circuit.grounding-grows': {
    title: 'NEC 250.122(B): the ground grows with conductors enlarged for the drop',
    standing: 'from memory',
  },
  'circuit.fill': {
    title:
      'NEC chapter 9, tables 1, 4 and 5: how much of a conduit conductors may take; thin-walled tubing, single conductors',
    edition: '2023',
    standing: 'standard',
  },
  'circuit.disconnect': {
    title: 'NEC 440.12: a disconnect for at least 115 % of the rated-load current',
    standing: 'from memory',
  },
  'circuit.sight': {
    title: 'NEC 440.14 and article 100: within sight of the unit, readily reached, no more than 50 ft away',
    standing: 'from memory',
  },
  'circuit.between': { title: 'The maker’s installation manual: cable between the units', standing: 'maker' },
  'circuit.surge': { title: 'The inverter’s rating for a few seconds carries the worst start', standing: 'maker' },
  'circuit.legs': {
    title: 'Each leg of a split-phase inverter carries half of its rating',
    standing: 'common practice',
  },
  'circuit.generator': {
    title:
      'Common practice, no source: 50 to 80 % of the rating; 3.5 % less for each 300 m above 300 m, 1 % for each 5.5 K above 25 °C',
    standing: 'common practice',
  },
  'circuit.battery': {
    title:
      'NFPA 70 (NEC) 706.30: what an inverter draws at rated power and its lowest input voltage, 125 % of it for the fuse; it shuts off at 2.8 V a lithium iron phosphate cell, 1.75 V a lead one: common practice',
    standing: 'from memory',
  },
  'circuit.insulation': {
    title: 'Common practice, no source: 1 MΩ at 500 V at the least, new cable far above',
    standing: 'common practice',
  },
};
