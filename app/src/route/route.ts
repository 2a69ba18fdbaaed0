import { type TradeId, tradeIds } from '@kneewall/project';
import { useSyncExternalStore } from 'react';

/** Where the person is. `finding` is the one whose working stands open, `field` the one to show, `card` the task whose card is. */
export type Route = { readonly finding?: string; readonly field?: string; readonly card?: string } & (
  | { readonly screen: 'home' | 'first' | 'trades' | 'project' | 'buy' | 'do' | 'read' }
  | { readonly screen: 'trade'; readonly trade: TradeId }
);

const plainScreens = ['first', 'trades', 'project', 'buy', 'do', 'read'] as const;

/** Reads the part of an address after `#`. What is not known leads home. */
export function readRoute(hash: string): Route {
  const [path = '', query = ''] = hash.replace(/^#/, '').split('?');
  const asked = new URLSearchParams(query);
  const finding = asked.get('finding');
  const field = asked.get('field');
  const card = asked.get('card');
  const extra = { ...(finding ? { finding } : {}), ...(field ? { field } : {}), ...(card ? { card } : {}) };
  const [first, second] = path.split('/').filter((part) => part !== '');
  const trade = first === 'trade' ? tradeIds.find((id) => id === second) : undefined;
  if (trade) return { screen: 'trade', trade, ...extra };
  return { screen: plainScreens.find((s) => s === first) ?? 'home', ...extra };
}

/** The address of a place, `#` included. */
export function printRoute(route: Route): string {
  const path = route.screen === 'home' ? '/' : route.screen === 'trade' ? `/trade/${route.trade}` : `/${route.screen}`;
  const asked = new URLSearchParams();
  if (route.finding) asked.set('finding', route.finding);
  if (route.field) asked.set('field', route.field);
  if (route.card) asked.set('card', route.card);
  const query = asked.toString();
  return `#${path}${query === '' ? '' : `?${query}`}`;
}

const hashNow = (): string => window.location.hash;

function onHash(changed: () => void): () => void {
  window.addEventListener('hashchange', changed);
  return () => window.removeEventListener('hashchange', changed);
}

export const useRoute = (): Route => readRoute(useSyncExternalStore(onHash, hashNow));

export function goTo(route: Route): void {
  window.location.hash = printRoute(route);
}
