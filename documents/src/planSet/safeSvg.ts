const elements = new Set(
  'svg title style defs g rect line polyline polygon circle ellipse path text tspan pattern clipPath'.split(' '),
);

/**
 * A sheet as the printing library may have it: without its XML head, and refused, as our own fault, where it holds
 * anything but plain shapes and letters. The library would fetch pictures and files that a drawing names.
 */
export function safeSvg(sheet: string): string {
  const svg = sheet.replace(/^<\?xml[^>]*\?>\s*/, '');
  for (const [, name = ''] of svg.matchAll(/<\/?([^\s/>]*)/g))
    if (!elements.has(name)) throw new Error(`assert: a sheet may not hold <${name}>`);
  // The printing library would draw the rim of such letters over the letters.
  if (svg.includes('paint-order')) throw new Error('assert: a sheet may not ask for the order of painting');
  // What stands between the elements is letters, but for the styles.
  const marked = [...svg.matchAll(/<[^>]*>|(?<=<style>)[^<]*/g)].join('\n');
  for (const [reference] of marked.matchAll(/(?:href\s*=|url\s*\()\s*["']?./g))
    if (!reference.endsWith('#')) throw new Error('assert: a sheet may point only into itself');
  return svg;
}
