import { type AirModel, nominalAir } from '@kneewall/engine';
import { airDensity } from '@kneewall/engine/physics';

/** Pa at a standard atmosphere. */
const standard = 101_325;

/**
 * The least duct system there is: one run to a register in a room, one back from a grille in the hall, their registers
 * with `resistance` in Pa s²/m⁶ each and ducts that hardly resist, no leaks. Air of `density`, kg/m³; blower points m³/s, Pa.
 */
export function ductSystem(given: {
  readonly points: AirModel['blower']['points'];
  readonly density: number;
  readonly resistance?: number;
}): AirModel {
  const run = (id: string, side: 'supply' | 'return') => ({
    id,
    name: id,
    side,
    kind: 'round' as const,
    diameter: 2,
    area: Math.PI,
    length: 1e-3,
    surface: 1,
    roughness: 0,
    frictionFactor: 1,
    lossCoefficient: 0,
    insulation: 1,
    leakage: 0,
    place: 'inside' as const,
    supports: 1,
  });
  const face = (id: string, section: string, room: string) => ({
    id,
    name: id,
    section,
    room,
    faceArea: 1,
    freeArea: 1,
    resistance: given.resistance ?? 100,
  });
  return {
    sections: [run('out', 'supply'), run('back', 'return')],
    terminals: [face('register', 'out', 'room'), face('grille', 'back', 'hall')],
    filter: { pressure: 0, velocity: 1, exponent: 2, area: 1 },
    added: 0,
    blower: { setting: 'only', points: given.points },
    pressure: (standard * given.density) / airDensity(nominalAir.supplyTemperature, standard),
  };
}
