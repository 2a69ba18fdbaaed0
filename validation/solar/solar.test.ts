import { sunPosition } from '@kneewall/engine/physics';
import { Body, Equator, Horizon, Observer } from 'astronomy-engine';
import { describe, expect, it } from 'vitest';
import { checkSource } from '../src/checkSource.ts';
import { source } from './measure.ts';

checkSource(source, 837);

describe('places of the sun against the general astronomy library astronomy-engine 2.1.19 (computed)', () => {
  it('agree within 0.01 degree on 300 moments of 1950 to 2050, all over the earth', () => {
    const rad = Math.PI / 180;
    for (let i = 0; i < 300; i++) {
      const time = Date.UTC(1950, 0, 1) / 1000 + i * 10_519_301;
      const [latitude, longitude] = [((i * 37) % 131) - 65, ((i * 101) % 359) - 179];
      const ours = sunPosition({ time, latitude, longitude });
      const observer = new Observer(latitude, longitude, 0);
      const moment = new Date(time * 1000);
      const place = Equator(Body.Sun, moment, observer, true, true);
      const theirs = Horizon(moment, observer, place.ra, place.dec);
      expect(Math.abs(ours.zenith - (90 - theirs.altitude))).toBeLessThan(0.01);
      const turn = ((ours.azimuth - theirs.azimuth + 540) % 360) - 180;
      expect(Math.abs(turn * Math.sin(ours.zenith * rad))).toBeLessThan(0.01);
    }
  });
});
