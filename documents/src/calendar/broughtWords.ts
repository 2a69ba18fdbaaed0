import { shopTitle, type TradeResults } from '@kneewall/engine';

type Delivery = TradeResults['materials']['own']['deliveries'][number];

/** What a delivery is said to bring: things by name, how much of those that have an amount, else all from its shop. */
export function broughtWords({ goods, amounts, brings }: Delivery): string {
  const counted = amounts.map(({ good, amount }) => `${good} (${amount})`);
  const named = goods.filter((g) => !amounts.some((a) => a.good.toLowerCase() === g.toLowerCase()));
  const whole = brings === 'all' ? 'everything' : `what comes from: ${shopTitle[brings]}`;
  if (goods.length > 0) return [...named, ...counted].join('; ');
  return counted.length > 0 ? `${whole}; of it ${counted.join('; ')}` : whole;
}
