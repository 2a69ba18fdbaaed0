import type { Sources } from '../plan/source.ts';

export const sources: Sources = {
  project: { title: 'Entered in the project', standing: 'project' },
  'access.sheet': { title: 'The maker’s data sheet: sides and mass', standing: 'maker' },
  'access.corner': { title: 'A rectangle round a square corner: least over the angle', standing: 'definition' },
  'access.rectangle': {
    title: 'A rectangle in a rectangle: Carver 1957; Wetzel, Mathematics Magazine 73 (2000) 204-211',
    standing: 'paper',
  },
  'access.never': {
    title: 'The cut that halves a box holds an ellipse of its two smaller sides',
    standing: 'definition',
  },
  'access.spare': {
    title: 'Common practice, no source: 12 mm or half an inch on each side',
    standing: 'common practice',
  },
  'access.motion': {
    title: 'Motion planning in the plane: a path replayed by separating axes, or every cell of poses proved to touch',
    standing: 'definition',
  },
  'access.tilt': { title: 'A box leaning in a slot; enough height, not the least', standing: 'definition' },
  'access.opening': {
    title: 'International Residential Code M1305.1: 20 by 30 in, and large enough for the largest piece',
    standing: 'standard',
  },
  'access.passage': {
    title: 'International Residential Code M1305.1: 22 in wide, 30 in high, 20 ft long, floor of 24 in',
    standing: 'standard',
  },
  'access.members': {
    title:
      'Common practice, no source: timbers from outer face to outer face of the joists that carry; boards 2x6 laid flat to walk on; no design of structure',
    standing: 'common practice',
  },
  'access.ramp-timber': {
    title:
      'Common practice, no source: two planks 2x10 in one piece side by side, a batten under them every 0.6 m; no design of structure',
    standing: 'common practice',
  },
  'access.space': {
    title: 'International Residential Code M1305.1: 30 by 30 in where it is served',
    standing: 'standard',
  },
  'access.light': {
    title: 'International Residential Code M1305.1: switched light, receptacle near the unit',
    standing: 'from memory',
  },
  'access.lifting': {
    title: 'Revised NIOSH lifting equation, 94-110; some of its shares from memory',
    standing: 'standard',
  },
  'access.together': {
    title: 'ISO 11228-1: two lift two thirds of their sum, three half of it',
    standing: 'from memory',
  },
  'access.rope': { title: 'Rope over sheaves, each passing on a share', standing: 'definition' },
  'access.pull': {
    title: 'Common practice, no source: a person pulls 200 to 300 N steadily',
    standing: 'common practice',
  },
  'access.gear': {
    title: 'Common practice, no source: lifting gear is loaded to a fifth of what breaks it, or less',
    standing: 'common practice',
  },
  'access.beam': { title: 'Statics of a beam on two bearings', standing: 'definition' },
  'access.spans': { title: 'International Residential Code, span tables', standing: 'standard' },
  'access.timber': {
    title: 'Supplement of the NDS: plain grades of common timber, size and repetition counted',
    standing: 'from memory',
  },
  'access.sag': { title: 'International Residential Code: a 240th of the span', standing: 'from memory' },
  'access.engineer': {
    title: 'Common practice, no source: a fifth of the strength left, or an engineer looks',
    standing: 'common practice',
  },
  'access.deck': {
    title: 'International Residential Code M1305.1: solid floor to the unit and at it',
    standing: 'standard',
  },
  'access.attic-heat': {
    title:
      'Attic and roof from the house as entered, other months by their means of air, sun and moisture, globe as their mean; at dawn 2 K over the coolest air, common practice, no source',
    standing: 'common practice',
  },
  'access.wet-bulb': {
    title: 'Wet bulb of moist air, and 1 K for the roof’s radiation: common practice, no source',
    standing: 'common practice',
  },
  'access.wbgt': { title: 'ISO 7243: 0.7 natural wet bulb and 0.3 globe', standing: 'from memory' },
  'access.clothes': { title: 'ACGIH: what clothes add to the index', standing: 'paper' },
  'access.screening': {
    title: 'ACGIH screening table of work in an hour, not used to heat unless said',
    standing: 'from memory',
  },
  'access.stull': { title: 'Stull 2011: wet bulb from temperature and humidity', standing: 'paper' },
  'access.heat-limit': { title: 'NIOSH 2016-106, section 8.1: limits of work in heat', standing: 'standard' },
  'access.efforts': { title: 'NIOSH and ACGIH: heat that a person gives off', standing: 'from memory' },
  'access.heat-index': { title: 'Heat index of the United States weather service', standing: 'standard' },
  'access.hours': {
    title:
      'The attic by the hour through the house’s own year, nine days of ten no hotter; screening table of work in an hour',
    standing: 'from memory',
  },
  'access.water': {
    title: 'NIOSH 2016-106: a cup of 240 mL each quarter of an hour, at most 1.4 L in an hour',
    standing: 'from memory',
  },
  'access.alone': {
    title: 'Common practice, no source: hoisting, ladders and hot attics never alone',
    standing: 'common practice',
  },
  'access.ladder': {
    title: 'The ladder’s label: person, clothes, tools and load together',
    standing: 'maker',
  },
  'access.ramp': { title: 'Statics of a load drawn up a slope against friction', standing: 'definition' },
  'access.stair': { title: 'Statics of a box on two carriers, its middle above their hands', standing: 'definition' },
  'access.wood': { title: 'Common practice, no source: 600 kg/m³ of panels and timber', standing: 'common practice' },
  'access.mount': {
    title: 'An undamped mass on a spring; less than 30 % of the shaking let through is common practice, no source',
    standing: 'common practice',
  },
};
