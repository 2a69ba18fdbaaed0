import { element, pointsOf, type Svg, words } from '../sheet/svg.ts';
import { type Label, lineHeight, type Rect } from './labels.ts';
import type { DuctPicture } from './onSheet.ts';

/** The picture itself: rooms below, ducts with their walls, handler, registers, labels on top. */
export function drawing(picture: DuctPicture, letters: number): Svg {
  const { rooms, ducts, handler, faces, labels, roomLabels } = picture;
  return element(
    'g',
    { class: 'plan' },
    ...rooms.map((r) => element('polygon', { points: pointsOf(r.corners), class: 'room', 'data-room': r.id })),
    ...roomLabels.map((l) => labelAt(l, letters, 'room-name')),
    ...ducts.map(ductAt),
    ...(handler.length > 0 ? [handlerAt(handler)] : []),
    ...faces.map(({ face, box }) => faceAt(face.id, face.tag, face.name, box)),
    ...labels.map((l) => labelAt(l, letters, 'label')),
  );
}

/** m of metal and jacket are not drawn: the walls are two lines, their distance is the inner size. */
function ductAt({ duct, way, width, arrow }: DuctPicture['ducts'][number]): Svg {
  const points = pointsOf(way);
  const [x, y] = arrow.at;
  const size = Math.min(1.6, Math.max(0.8, width * 0.4));
  return element(
    'g',
    { class: `duct ${duct.side}`, 'data-section': duct.id },
    element('title', {}, words(`${duct.tag} ${duct.name}`)),
    element('polyline', { points, class: 'wall', 'stroke-width': width + 0.35 }),
    element('polyline', { points, class: 'inside', 'stroke-width': Math.max(0.1, width - 0.35) }),
    ...(duct.side === 'return' ? [element('polyline', { points, class: 'middle' })] : []),
    element('path', {
      d: 'M-1 -1 L1 0 L-1 1 Z',
      class: 'arrow',
      transform: `translate(${x.toFixed(2)} ${y.toFixed(2)}) rotate(${arrow.turn.toFixed(2)}) scale(${size.toFixed(2)})`,
    }),
  );
}

function handlerAt(corners: DuctPicture['handler']): Svg {
  const [x, y] = [0, 1].map((k) => corners.reduce((sum, c) => sum + (c[k] ?? 0), 0) / corners.length);
  return element(
    'g',
    { class: 'air-handler' },
    element('polygon', { points: pointsOf(corners), class: 'handler' }),
    element('text', { x: x ?? 0, y: (y ?? 0) + 0.9, class: 'tag' }, words('AH')),
  );
}

const faceAt = (id: string, tag: string, name: string, box: Rect): Svg =>
  element(
    'g',
    { 'data-terminal': id },
    element('title', {}, words(`${tag} ${name}`)),
    element('rect', { ...box, class: 'face' }),
    element('text', { x: box.x + box.width / 2, y: box.y + box.height / 2 + 0.9, class: 'tag' }, words(tag)),
  );

/** Letters on a pale ground, so that a wall below them does not cross them out. */
const labelAt = ({ id, lines, box }: Label, letters: number, kind: string): Svg =>
  element(
    'g',
    { class: kind, 'data-label': id },
    element('rect', { ...box, class: 'behind' }),
    ...lines.map((line, i) => element('text', { x: box.x, y: box.y + letters * (0.9 + i * lineHeight) }, words(line))),
  );
