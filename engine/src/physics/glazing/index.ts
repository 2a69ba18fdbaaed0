export type { Optics, Pane } from './panes.ts';
export { angleModifier, commonPane, glassOptics, surfaceReflectance } from './panes.ts';
