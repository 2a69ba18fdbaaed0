/**
 * Words for tools that several tasks need, so that one tool is one line wherever tools are added up. What only one task needs is
 * written there.
 */
export const tool = {
  lamp: 'Head lamp, one each',
  boards: 'Boards to kneel on, three joists long, two',
  mask: 'Dust mask and goggles, one each',
  gloves: 'Gloves against cuts, one pair each',
  guard: 'Barrier round the open hatch',
  water: 'Drinking water, two litres each',
  tape: 'Tape measure',
  marker: 'Marker',
  level: 'Spirit level',
  knife: 'Knife',
  snips: 'Tin snips',
  drill: 'Drill driver, bits and step drill',
  holeSaw: 'Hole saw or core bit of the sleeve’s size',
  saw: 'Hand saw',
  spanners: 'Two adjustable spanners',
  ladder: 'Ladder, tied or held',
  phone: 'Phone for photographs',
  lock: 'Padlock and tag for the breaker',
  tester: 'Two-pole voltage tester',
  meter: 'Multimeter',
  torque: 'Torque screwdriver',
  gauge: 'Pressure gauge for ducts, with tubes and probe',
  bucket: 'Bucket',
  jug: 'One-litre jug',
  bonding: 'Primer and cement for the pipe, brushes',
  brush: 'Stiff brush and rags',
  straps: 'Straps with ratchets',
  rope: 'Rope of 12 mm',
  sack: 'Sack, to be filled to half the weight',
} as const;

/** What goes up with whoever works in the attic. */
export const forAttic = [tool.lamp, tool.boards, tool.mask, tool.gloves, tool.guard, tool.water] as const;

/** Tools of which a household has one: two tasks that need it are not done at the same time. */
export const single: readonly string[] = [tool.drill, tool.ladder, tool.gauge, tool.tester];
