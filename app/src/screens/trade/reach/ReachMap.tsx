import type { TradeResults } from '@kneewall/engine';
import { inOrder, type ResolvedProject } from '@kneewall/project';
import { useId } from 'react';
import { Quantity } from '../../../quantity/Quantity.tsx';
import { type Box, ReachDrawing, type WallPicture } from './ReachDrawing.tsx';
import { ReachKey } from './ReachKey.tsx';
import './Reach.css';

type Lineset = TradeResults['lineset'];
type Maps = Extract<Lineset['maps'], { ok: true }>['value'];
type Input = ResolvedProject['routes']['lineset'];
type Size = { readonly likely: number } | { readonly missing: true };

/** Where the outdoor unit's lower left corner may lie on one wall, and which line set reaches there. */
export function ReachMap({
  map,
  result,
  input,
  outdoor,
}: {
  map: Maps[number];
  result: Lineset;
  input: Input;
  outdoor: { readonly width: Size; readonly height: Size } | undefined;
}) {
  const id = useId();
  const wall = input.walls[map.wall];
  if (!wall) return null;
  const { stock, baseLeast } = result;
  const things = inOrder(wall.obstacles).flatMap(([key, thing]) => {
    const box = boxOf(thing);
    return box ? [{ name: thing.name ?? key, box }] : [];
  });
  const unit = outdoor && input.place.wall === map.wall ? boxOf({ ...input.place, ...outdoor }) : undefined;
  const picture: WallPicture = {
    width: of(wall.width),
    height: of(wall.height),
    things: things.map((t) => t.box),
    out: { x: of(wall.outX), z: of(wall.outZ) },
    ...(unit ? { unit } : {}),
    ...(baseLeast.ok ? { snow: baseLeast.value } : {}),
  };
  const reached = stock.map((_, k) => k).filter((k) => map.rows.some((row) => row.some((r) => r.stock === k)));
  return (
    <figure className="reach">
      <figcaption>{wall.name ?? map.wall}, from outside: where the unit’s lower left corner may lie.</figcaption>
      <ReachDrawing id={id} map={map} picture={picture} reached={reached} />
      <ReachKey id={id} stock={stock} reached={reached} names={things.map((t) => t.name)} picture={picture} />
      {map.best ? (
        <p>
          The shortest set that reaches anywhere is the{' '}
          <Quantity value={stock[map.best.stock]?.length ?? 0} kind="length" /> one: lowest with the corner{' '}
          <Quantity value={map.best.x} kind="length" /> from the left end and{' '}
          <Quantity value={map.best.z} kind="length" /> above the ground.
        </p>
      ) : (
        <p>No set for sale reaches a place on this wall that is free and above the snow.</p>
      )}
    </figure>
  );
}

const of = (x: Size): number => ('likely' in x ? x.likely : 0);

/** A box on the wall, none while a measure of it is not known. */
function boxOf(b: { x: Size; z: Size; width: Size; height: Size }): Box | undefined {
  if ([b.x, b.z, b.width, b.height].some((s) => !('likely' in s))) return undefined;
  return { x: of(b.x), z: of(b.z), width: of(b.width), height: of(b.height) };
}
