import type { ResolvedProject } from '@kneewall/project';
import type { Scenario } from '../../plan/scenario.ts';
import type { Box } from '../kernels/boxes.ts';
import type { PassageKind } from '../passageKind.ts';

type Entered = ResolvedProject['routes']['passages'][string];

/** A passage as motion planning sees it: m and degrees, what nobody entered left out. */
export type AskedPassage = {
  readonly kind: PassageKind;
  readonly width: number;
  readonly height: number;
  readonly framing: number;
  readonly ladder: number;
  readonly below: number;
  readonly storey: number;
  readonly roof: number;
  readonly rises: 'height' | 'width';
  readonly headroom?: number;
  readonly after?: number;
  readonly ridge?: number;
  readonly rise?: number;
  readonly going?: number;
};

/** One piece at one passage. */
export type AskedWay = { readonly passage: AskedPassage; readonly piece: Box };

/** Reads a passage; ends the enclosing `attempt` where a measure that it needs is missing. */
export function askedPassage(passage: Entered, kind: PassageKind, s: Scenario): AskedPassage {
  const maybe = (name: 'headroom' | 'after' | 'ridge' | 'rise' | 'going') => {
    const value = s.maybe(passage[name]);
    return value === undefined ? {} : { [name]: value };
  };
  return {
    kind,
    width: s.of(passage.width),
    height: s.of(passage.height),
    framing: s.of(passage.framing),
    ladder: s.of(passage.ladder),
    below: s.of(passage.below),
    storey: s.of(passage.storey),
    roof: s.of(passage.roof),
    rises: s.choice(passage.rises),
    ...maybe('headroom'),
    ...maybe('after'),
    ...maybe('ridge'),
    ...maybe('rise'),
    ...maybe('going'),
  };
}
