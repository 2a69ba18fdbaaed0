import type { WallLayer } from '../../physics/building/index.ts';
import type { PartId } from '../element.ts';

/** What lies behind a surface of a heated room. */
export type Behind = 'outdoors' | 'attic' | 'below' | 'ground' | 'unheated';

/** A window or door as the heat balance takes it: m, W/(m²K), share of the sun let in at right angles. */
export type ShellWindow = {
  readonly id: string;
  readonly width: number;
  readonly height: number;
  readonly u: number;
  readonly sunShare: number;
  readonly panes: 1 | 2;
  /** Share of the sun that a curtain or shutter leaves. */
  readonly covering: number;
  readonly overhang: number;
  readonly gap: number;
  /** How far it lies behind the face of the wall. */
  readonly recess: number;
};

export type ShellSurface = {
  readonly id: string;
  readonly room: string;
  readonly part: PartId;
  readonly behind: Behind;
  /** m² without its windows. */
  readonly area: number;
  /** Inside first, films left out. */
  readonly layers: readonly WallLayer[];
  /** Degrees; azimuth only where it looks outdoors. */
  readonly tilt: number;
  readonly azimuth: number;
  readonly absorptance: number;
  readonly windows: readonly ShellWindow[];
};

export type ShellRoom = {
  readonly id: string;
  readonly floorArea: number;
  readonly height: number;
  readonly storey: number;
  /** Kitchens and baths give off most vapour; a hall joins the others. */
  readonly use: string;
  /** Share of the time its door stands open. Source: `loads.doors` (common practice). */
  readonly doorOpen: number;
};

/** Doors that are shut at times stand open half of it. */
export const halfOpen = 0.5;

/** The roof over an attic: degrees, share of the sun taken up, U of deck and covering without films, air changes. */
export type ShellRoof = {
  readonly pitch: number;
  readonly absorptance: number;
  readonly deckU: number;
  readonly airChanges: number;
};

/** A house read out of a project in one scenario, ready to be laid out; the same from rooms and from a few answers. */
export type Shell = {
  readonly rooms: readonly ShellRoom[];
  readonly surfaces: readonly ShellSurface[];
  readonly roof: ShellRoof;
  /** m² on or over the ground and m of its edge. */
  readonly footprint: number;
  readonly perimeter: number;
  readonly vented: boolean;
};
