import type { DuctFact, DuctFacts, Spot } from './ductFacts.ts';
import { type Grip, placeGrips } from './grips.ts';
import { type Label, placeLabels, type Rect, textWidth, type Wanted } from './labels.ts';
import type { DuctLayout, LaidDuct } from './layOut.ts';
import { between, lengthOf, longestOf, meets, middleOf, type Stretch, squareAt, stretchesOf } from './stretches.ts';

/** A layout on a sheet or screen: places in its unit, y downward. */
export type DuctPicture = {
  readonly ducts: readonly {
    readonly duct: DuctFact;
    readonly way: readonly Spot[];
    readonly width: number;
    /** Where the air's direction is shown: the middle of the longest stretch, degrees clockwise from rightward. */
    readonly arrow: { readonly at: Spot; readonly turn: number };
  }[];
  readonly faces: readonly { readonly face: DuctFacts['faces'][number]; readonly box: Rect }[];
  readonly handler: readonly Spot[];
  readonly rooms: DuctFacts['rooms'];
  /** Where each duct is taken hold of, where the framing has grips. */
  readonly grips: readonly Grip[];
  /** By the id of a section or of a register. */
  readonly labels: readonly Label[];
  readonly roomLabels: readonly Label[];
};

export type Framing = {
  /** The field the drawing has. */
  readonly field: Rect;
  /** Sheet units a metre of the layout. */
  readonly perMetre: number;
  /** Size of letters, and half the side of a register's mark. */
  readonly letters: number;
  readonly mark: number;
  /** The least a duct is drawn wide, so that a thin one is seen; 0 to scale. */
  readonly widthLeast: number;
  /** Half the side of a size grip, and whether labels keep clear of all; left out where nobody can take hold of one. */
  readonly grip?: { readonly half: number; readonly clear: boolean };
  readonly ductTexts: (duct: DuctFact) => readonly (readonly string[])[];
  readonly faceTexts: (face: DuctFacts['faces'][number]) => readonly (readonly string[])[];
};

/** Puts a layout in the middle of its field, with every label where there is room for it. Pure. */
export function pictureOf(layout: DuctLayout, framing: Framing): DuctPicture {
  const { field, perMetre, mark, letters } = framing;
  const { box } = layout;
  const left = field.x + (field.width - (box.right - box.left) * perMetre) / 2;
  const top = field.y + (field.height - (box.top - box.bottom) * perMetre) / 2;
  const put = ([x, y]: Spot): Spot => [left + (x - box.left) * perMetre, top + (box.top - y) * perMetre];
  // The risers of a schematic lie over one another: arrows and labels stand at the run that is a section's own.
  const ownOf = (way: readonly Spot[]): readonly Spot[] => (layout.scaled ? way : way.slice(-2));
  const ducts = layout.ducts.map((laid) => onSheet(laid, put, framing, ownOf(laid.way)));
  const faces = layout.faces.map(({ face, at }) => ({ face, box: squareAt(put(at), mark) }));
  const handler = layout.handler.map(put);
  const rooms = layout.rooms.map((r) => ({ ...r, corners: r.corners.map(put) }));
  const drawn = [...ducts.flatMap((d) => coversOf(d.way, d.width)), ...faces.map((f) => f.box), around(handler)];
  const grips =
    framing.grip === undefined
      ? []
      : placeGrips(
          ducts.map((d) => ({ id: d.duct.id, way: ownOf(d.way), width: d.width })),
          drawn,
          framing.grip.half,
        );
  const clear = framing.grip?.clear ? framing.grip.half : undefined;
  const taken = [...drawn, ...(clear === undefined ? [] : grips.map((g) => squareAt(g.at, clear)))];
  const wanted: Wanted[] = [
    ...faces.map(({ face, box: b }) => ({
      id: face.id,
      texts: framing.faceTexts(face),
      anchors: [{ at: middleOf(b), clear: mark + letters * 0.2 }],
    })),
    ...ducts.map(({ duct, way, width }) => ({
      id: duct.id,
      texts: framing.ductTexts(duct),
      anchors: anchorsOf(ownOf(way), width / 2 + letters * 0.25),
    })),
  ];
  const labels = placeLabels(wanted, { taken, within: field, size: letters });
  const roomLabels = rooms.flatMap((room) => roomLabel(room, [...taken, ...labels.map((l) => l.box)], letters));
  return { ducts, faces, handler, rooms, grips, labels, roomLabels };
}

function onSheet(
  { duct, way, width }: LaidDuct,
  put: (s: Spot) => Spot,
  { perMetre, widthLeast }: Framing,
  own: readonly Spot[],
) {
  const placed = way.map(put);
  const [from, to] = longestOf(own.map(put));
  const turn = (Math.atan2(to[1] - from[1], to[0] - from[0]) * 180) / Math.PI;
  return {
    duct,
    way: placed,
    width: Math.max(width * perMetre, widthLeast),
    arrow: { at: between(from, to, 0.5), turn: duct.side === 'supply' ? turn : turn + 180 },
  };
}

/** Spots along a way, those of its longest stretches first. */
function anchorsOf(way: readonly Spot[], clear: number): { at: Spot; clear: number }[] {
  const stretches = stretchesOf(way).sort((a, b) => lengthOf(b) - lengthOf(a));
  const only = way[0] ?? [0, 0];
  const all: readonly Stretch[] = stretches.length > 0 ? stretches : [[only, only]];
  return all.flatMap(([a, b]) => [0.5, 0.35, 0.65, 0.2, 0.8].map((t) => ({ at: between(a, b, t), clear })));
}

/** Boxes that together cover a way of some width, short enough to follow a slanting stretch. */
function coversOf(way: readonly Spot[], width: number): Rect[] {
  return stretchesOf(way).flatMap(([a, b]) => {
    const straight = a[0] === b[0] || a[1] === b[1];
    const pieces = straight ? 1 : Math.min(40, Math.max(1, Math.ceil(lengthOf([a, b]) / Math.max(width, 1))));
    return Array.from({ length: pieces }, (_, i) =>
      grown([between(a, b, i / pieces), between(a, b, (i + 1) / pieces)], width / 2),
    );
  });
}

const around = (spots: readonly Spot[]): Rect => grown(spots, 0);

function grown(spots: readonly Spot[], by: number): Rect {
  if (spots.length === 0) return { x: 0, y: 0, width: 0, height: 0 };
  const [xs, ys] = [spots.map((s) => s[0]), spots.map((s) => s[1])];
  const [x, y] = [Math.min(...xs) - by, Math.min(...ys) - by];
  return { x, y, width: Math.max(...xs) + by - x, height: Math.max(...ys) + by - y };
}

/** A room's name in a corner of the room, or nowhere where there is no room for it. */
function roomLabel(room: DuctFacts['rooms'][number], taken: readonly Rect[], size: number): Label[] {
  const inside = around(room.corners);
  const [width, height] = [textWidth([room.name], size), size * 1.2];
  const gap = size * 0.5;
  const spots: Spot[] = [
    [inside.x + gap, inside.y + gap],
    [inside.x + inside.width - width - gap, inside.y + inside.height - height - gap],
    [inside.x + gap, inside.y + inside.height - height - gap],
    [inside.x + inside.width - width - gap, inside.y + gap],
  ];
  const free = spots
    .map(([x, y]) => ({ x, y, width, height }))
    .find((box) => box.width < inside.width && !taken.some((r) => meets(box, r)));
  return free ? [{ id: room.id, lines: [room.name], box: free }] : [];
}
