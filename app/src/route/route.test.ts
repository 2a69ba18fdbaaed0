import { describe, expect, it } from 'vitest';
import { printRoute, type Route, readRoute } from './route.ts';

describe('addresses', () => {
  const places: Route[] = [
    { screen: 'home' },
    { screen: 'first' },
    { screen: 'project', field: 'about.name' },
    { screen: 'trade', trade: 'air', finding: 'air/room-share:bed-south' },
    { screen: 'home', finding: 'equipment/holds-night:unit-24' },
  ];
  it.each(places)('of %j read back as what they were printed from', (place) => {
    expect(readRoute(printRoute(place))).toEqual(place);
  });
  it.each(['', '#', '#/', '#/nowhere', '#/trade/plumbing', '#/trade', '#/%E0%A4%A'])('lead home from %j', (hash) => {
    expect(readRoute(hash)).toEqual({ screen: 'home' });
  });
});
