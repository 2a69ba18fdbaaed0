import { type ChangeKind, type Help, helpSteps } from '@kneewall/engine';
import { type Project, printQuantity, type System } from '@kneewall/project';

const words: Readonly<Record<ChangeKind, string>> = {
  panels: 'A kilowatt more of panels on',
  steep: 'A kilowatt more of panels, on a rack at',
  battery: '5 kWh more of battery',
  charger: 'A charger that takes all the generator gives',
  generator: 'A generator and charger half as large again',
  'warm-box': 'The battery in a warm box',
  indoors: 'The battery in a heated room',
  cooler: 'The house kept cooler by',
  setback: 'Nights cooler by',
  'stove-days': 'A stove tended on the 20 darkest days, the unit at its lowest speed',
  seal: 'Seal the leaks',
  ceiling: 'Insulate the ceilings',
  floor: 'Insulate the floor',
  panes: 'Second panes on poor windows',
  ducts: 'Seal the ducts’ joints',
  unit: 'Instead:',
  aged: 'An aged battery',
};

/** What a change is, with the person's own names and units. */
export function helpWords({ kind, of = '', amount = 0 }: Help, project: Project | undefined, units: System): string {
  if (kind === 'panels') return `${words.panels} “${project?.power?.arrays?.[of]?.name ?? of}”`;
  if (kind === 'steep') return `${words.steep} ${Math.round(amount)}°`;
  if (kind === 'unit') return `${words.unit} “${project?.candidates?.[of]?.name ?? of}”`;
  if (kind === 'cooler' || kind === 'setback')
    return `${words[kind]} ${printQuantity(helpSteps[kind], 'temperature-difference', units)}`;
  return words[kind];
}
