import type { Sources } from '../plan/source.ts';

export const sources: Sources = {
  'iso-6946.combined': {
    title: 'ISO 6946, combined method for layers crossed by framing',
    edition: '2017',
    standing: 'from memory',
  },
  'iso-13370.slab': {
    title: 'ISO 13370, slab on the ground and suspended floor',
    edition: '2017',
    standing: 'from memory',
  },
  'infiltration.enhanced': {
    title: 'ASHRAE Handbook, Fundamentals, enhanced infiltration model',
    edition: '2001 to 2021',
    standing: 'from memory',
  },
  'infiltration.blower-door': {
    title: 'ASTM E779 and ISO 9972, leakage from a blower-door figure',
    standing: 'from memory',
  },
  'attic.steady': { title: 'Steady heat balance of an attic: rooms, roof, vents', standing: 'definition' },
  'loads.transmission': { title: 'Heat through a surface: U × A × temperature difference', standing: 'definition' },
  'loads.leakage': { title: 'Heat carried by leaking air: flow × density × heat capacity', standing: 'definition' },
  'loads.framed': {
    title:
      'Framed walls, ceilings, roofs and floors: layers by code history and common practice, framing shares by ASHRAE Handbook, Fundamentals',
    standing: 'from memory',
  },
  'loads.massive': {
    title: 'Masonry, concrete, logs, straw and earth: layers by common practice, figures from ISO 10456 and EN 12524',
    standing: 'from memory',
  },
  'loads.by-kind': {
    title: 'Common practice, no source: a U alone is taken for the usual construction of its kind nearest to it',
    standing: 'common practice',
  },
  'iso-6946.films': { title: 'ISO 6946, surface resistances', edition: '2017', standing: 'from memory' },
  'loads.materials': {
    title:
      'ISO 10456 tables 3 and 4 (before: EN 12524) and ASHRAE Handbook, Fundamentals: building materials; old fills by common practice',
    standing: 'from memory',
  },
  'loads.eras': {
    title:
      'Common practice and code history by the age of a house; panes and insulation since by household surveys of 2009 and 2015 (US EIA; Joint Center for Housing Studies)',
    standing: 'from memory',
  },
  'loads.cover': {
    title: 'Common practice, no source: rooms measured inside add up to the house within a tenth',
    standing: 'common practice',
  },
  'loads.glazing': { title: 'Usual figures of window glass', standing: 'from memory' },
  'loads.shades': {
    title: 'Common practice, no source: share of the sun that coverings pass',
    standing: 'common practice',
  },
  'loads.draughts': { title: 'Common practice, no source: leakage by what people feel', standing: 'common practice' },
  'loads.people': {
    title: 'ASHRAE Handbook, Fundamentals, residential loads: a person at rest',
    standing: 'from memory',
  },
  'loads.sol-air': { title: 'ASHRAE Handbook, Fundamentals, sol-air temperature', standing: 'from memory' },
  'loads.unheated': {
    title: 'Common practice, no source: an unheated room lies half way',
    standing: 'common practice',
  },
  'loads.window-sun': {
    title: 'Sun through a window: area × solar share × sun at its angle, overhang by profile angle',
    standing: 'definition',
  },
  'loads.test-first': {
    title: 'Common practice, no source: one guess should not be worth more than 15 % of the load',
    standing: 'common practice',
  },
  'loads.winter': {
    title: 'Common practice, no source: fuel and house should agree within a third',
    standing: 'common practice',
  },
  'loads.fuel': {
    title: 'Heat balance of a winter: fuel, people and appliances against loss × degree-hours',
    standing: 'definition',
  },
  'loads.fuel-share': {
    title: 'Common practice, no source: share of a fuel’s energy that reaches the rooms',
    standing: 'common practice',
  },
  'loads.winter-weather': {
    title:
      'Common practice, no source: a winter lies within a tenth of the usual, a fifth where the climate is assumed',
    standing: 'common practice',
  },
  'loads.winter-night': {
    title: 'Common practice, no source: a cold night asks 1.1 times the winter’s mean for each degree, 0.95 to 1.3',
    standing: 'common practice',
  },
  'loads.learned': {
    title:
      'Share of the plan’s own loss, from a log held against the plan’s house in the same weather; shell and leaks alike, the sun through glass apart. With a range the whole stays as measured, whatever its parts (5 m/s, 24 K)',
    standing: 'definition',
  },
  'loads.learned-far': {
    title: 'Common practice, no source: beyond a third less or a half more the entries are corrected, not scaled',
    standing: 'common practice',
  },
  'loads.joint': {
    title:
      'Product of two independent triangular densities, 2.5 % beyond each end; an overlap below 0.05 is taken as a contradiction (common practice, no source)',
    standing: 'definition',
  },
  'loads.dominates': {
    title: 'Common practice, no source: a part above 35 % is mended first',
    standing: 'common practice',
  },
  'loads.dew-point': { title: 'ISO 13788, surface condensation by temperature factor', standing: 'from memory' },
  'loads.attic-work': {
    title:
      'Common practice, no source: above 40 °C attic work wants short turns; defer to published work and rest limits',
    standing: 'common practice',
  },
  'loads.combustion': {
    title: 'Draught of open flues: left to a licensed technician and the local code',
    standing: 'common practice',
  },
  'spread.first-order': { title: 'Shifts of single inputs joined as independent', standing: 'definition' },
  'loads.damp': {
    title: 'Common practice, no source: rooms above 70 % humidity for a tenth of the year grow mould',
    standing: 'common practice',
  },
  'loads.morning': {
    title: 'Common practice, no source: a morning may take a fifth more than an even night',
    standing: 'common practice',
  },
  'loads.balance': {
    title: 'Heat balance of walls by their exact modes, checked against ANSI/ASHRAE Standard 140',
    standing: 'from memory',
  },
  'iso-52016.convection': { title: 'ISO 52016-1, convection at inside surfaces', standing: 'from memory' },
  'iso-52016.contents': { title: 'ISO 52016-1, heat held by furniture', standing: 'from memory' },
  'iso-13370.periodic': { title: 'ISO 13370, ground through the year', standing: 'from memory' },
  'standard-140.films': { title: 'ANSI/ASHRAE Standard 140, films of glass and walls', standing: 'from memory' },
  'loads.inside-sun': {
    title: 'Common practice, no source: floors take up most of the sun let in',
    standing: 'common practice',
  },
  'loads.doorway': { title: 'Flow through an open doorway by a temperature difference', standing: 'from memory' },
  'loads.doors': {
    title: 'Common practice, no source: doors stand open half of the time',
    standing: 'common practice',
  },
  'loads.day': { title: 'Common practice, no source: appliances through a day', standing: 'common practice' },
  'loads.vapour': { title: 'BS 5250, moisture given off in homes', standing: 'from memory' },
  'loads.moisture-buffer': {
    title: 'Common practice, no source: rooms hold some fifteen times the vapour of their air',
    standing: 'common practice',
  },
  'loads.up-leak': {
    title:
      'ASHRAE Handbook, Fundamentals: ceilings are 3 to 30 % of the leakage area, 18 % on average; in winter about half of the area lets air out, so that a tenth to six tenths of it, likely a third, leaves by the ceiling',
    standing: 'from memory',
  },
  'loads.by-days': {
    title: 'The project’s own balance through the cold night and the hot day, walls and their heat counted',
    standing: 'project',
  },
  'loads.attic-air': {
    title: 'Common practice, no source: an attic’s usual air changes hold at 10 K and 3 m/s',
    standing: 'common practice',
  },
  'loads.night-day': {
    title: 'Common practice, no source: the cold night is a dull day that swings half as far as its month',
    standing: 'common practice',
  },
  'loads.sizes': {
    title: 'Common practice, no source: units come in steps of about 6,000 Btu/h',
    standing: 'common practice',
  },
  'improve.seal': {
    title: 'Chan, Joh & Sherman, Energy and Buildings 2013: leakage falls by 30 % in weatherisation programmes',
    standing: 'paper',
  },
  'improve.insulation': { title: 'Model energy codes: ceilings of R-49, floors of R-30', standing: 'from memory' },
  'improve.panes': { title: 'A second pane with still air between, ISO 6946 air layers', standing: 'from memory' },
  'improve.ducts': {
    title:
      'Field trials of sealing ducts with mastic took off two thirds to nine tenths of the leakage; three quarters are used',
    standing: 'common practice',
  },
  'improve.costs': {
    title: 'Common practice, no source: what such work costs; get quotes',
    standing: 'common practice',
  },
  'loads.wet-layers': {
    title:
      'ISO 13788, note: water runs off what does not soak it up from about 200 g/m² on; it has to dry within the year',
    edition: '2012',
    standing: 'from memory',
  },
  'iso-13788.interstitial': {
    title: 'ISO 13788, condensation inside constructions month by month',
    edition: '2012',
    standing: 'from memory',
  },
  'iso-13788.saturation': {
    title: 'ISO 13788, annex E, vapour pressure at saturation over water and ice',
    edition: '2012',
    standing: 'from memory',
  },
  'loads.paint': {
    title:
      'ISO 10456 table 4: coats of paint from 0.1 m (emulsion) to 3 m (gloss) of still air; several ordinary coats between, by common practice',
    standing: 'from memory',
  },
  'iso-13788.surface': {
    title: 'ISO 13788, surface at 80 % against mould, inside film 0.25 m²K/W, monthly means',
    edition: '2012',
    standing: 'from memory',
  },
  'iso-13788.classes': {
    title: 'ISO 13788, annex A, indoor humidity classes: from the lower limit of class 2 to the upper one of class 3',
    edition: '2012',
    standing: 'from memory',
  },
  'loads.damp-attic': {
    title:
      'Wood Handbook, Forest Products Laboratory: at 90 % humidity wood settles at about 20 % water, where rot begins',
    standing: 'from memory',
  },
  'attic.moisture': {
    title:
      'Steady balance of vapour in an attic: air from the rooms, air through the vents; the deck by its resistances',
    standing: 'definition',
  },
  'loads.month-sky': {
    title: 'ISO 13790, radiation to the sky in monthly means: 11 K below the air, 5 W/(m²K)',
    standing: 'from memory',
  },
};
