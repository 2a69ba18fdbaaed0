/** A piece of SVG as text. Only these functions make one, so that nothing a person typed gets in unescaped. */
export type Svg = { readonly svg: string };

type Attributes = Readonly<Record<string, string | number | undefined>>;

const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Characters that no XML 1.0 text may hold, lone halves of pairs among them. */
const forbidden =
  // biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what has to go
  /[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]|[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g;

/** Text made safe to stand in an element or an attribute. */
export const escaped = (text: string): string =>
  text.replaceAll(forbidden, '').replaceAll(/[&<>"']/g, (c) => entities[c] ?? '');

/** The text that `escaped` was given. */
export const plainText = (text: string): string =>
  Object.entries(entities).reduceRight((plain, [sign, entity]) => plain.replaceAll(entity, sign), text);

/** A number for a drawing: thousandths, without needless zeros. One that is not finite is our own fault. */
export function coordinate(n: number): string {
  if (!Number.isFinite(n)) throw new Error('assert: a drawing has a coordinate that is no number');
  const text = n.toFixed(3).replace(/\.?0+$/, '');
  return text === '-0' ? '0' : text;
}

export function element(name: string, attributes: Attributes, ...children: readonly Svg[]): Svg {
  const written = Object.entries(attributes).flatMap(([key, value]) =>
    value === undefined ? [] : [` ${key}="${typeof value === 'number' ? coordinate(value) : escaped(value)}"`],
  );
  const inside = children.map((c) => c.svg).join('');
  return { svg: inside === '' ? `<${name}${written.join('')}/>` : `<${name}${written.join('')}>${inside}</${name}>` };
}

export const words = (text: string): Svg => ({ svg: escaped(text) });

export const pointsOf = (spots: readonly (readonly [number, number])[]): string =>
  spots.map(([x, y]) => `${coordinate(x)},${coordinate(y)}`).join(' ');
