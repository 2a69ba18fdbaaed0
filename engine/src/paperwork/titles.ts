import type { Paper, PaperKind, PaperStatus } from './result.ts';

/** Papers as every screen and page calls them. */
export const paperKindTitle: Readonly<Record<PaperKind, string>> = {
  permit: 'Permit',
  inspection: 'Inspection',
  warranty: 'Warranty',
  insurance: 'Insurance',
  quote: 'Quote',
  incentive: 'Incentive',
};

export const paperStatusTitle: Readonly<Record<PaperStatus, string>> = {
  open: 'to ask',
  asked: 'asked for',
  granted: 'in hand',
  refused: 'refused',
};

/** A paper's name, with its kind where the name does not say it. */
export const paperTitle = ({ name, kind }: Paper): string =>
  name.toLowerCase().includes(kind) ? name : `${name} (${paperKindTitle[kind].toLowerCase()})`;
