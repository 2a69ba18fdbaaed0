/** The trades of the job, in the words of the trade folders. A field says which of them cannot do without it. */
export const tradeIds = [
  'climate',
  'loads',
  'equipment',
  'air',
  'condensate',
  'lineset',
  'circuit',
  'offgrid',
  'access',
  'paperwork',
  'materials',
  'schedule',
  'commissioning',
] as const;
export type TradeId = (typeof tradeIds)[number];
