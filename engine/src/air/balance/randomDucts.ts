import fc from 'fast-check';
import type { AirModel, DuctSection, Terminal } from '../ductwork.ts';

export const section = (id: string, more: Partial<DuctSection>): DuctSection => {
  const diameter = more.diameter ?? 0.2;
  return {
    id,
    name: id,
    side: 'supply',
    kind: 'round',
    diameter,
    area: (Math.PI * diameter ** 2) / 4,
    length: 3,
    surface: 1,
    roughness: 9e-5,
    frictionFactor: 1,
    lossCoefficient: 0.5,
    insulation: 1,
    leakage: 0,
    place: 'attic',
    supports: 1,
    ...more,
  };
};
export const terminal = (id: string, of: string, room: string, resistance: number): Terminal => ({
  id,
  name: id,
  section: of,
  room,
  faceArea: 0.03,
  freeArea: 0.02,
  resistance,
});

/** A unit with a falling blower, a filter and one return grille; what blows is given. */
export const house = (sections: readonly DuctSection[], terminals: readonly Terminal[]): AirModel => ({
  sections: [...sections, section('back', { side: 'return', diameter: 0.35 })],
  terminals: [...terminals, terminal('grille', 'back', 'hall', 100)],
  filter: { pressure: 30, velocity: 1.5, exponent: 1.4, area: 0.3 },
  added: 0,
  blower: {
    setting: 'high',
    points: [
      { flow: 0, pressure: 260 },
      { flow: 0.3, pressure: 160 },
      { flow: 0.7, pressure: 10 },
    ],
  },
  pressure: 101_325,
});

/** The same ducts on a blower whose table begins at that flow. */
export const houseOf = (model: AirModel, least: number): AirModel => {
  const at = (flow: number) => (flow < 0.3 ? 260 - (flow / 0.3) * 100 : 160 - ((flow - 0.3) / 0.4) * 150);
  const points = [least, 0.3, 0.7].filter((flow) => flow >= least).map((flow) => ({ flow, pressure: at(flow) }));
  return { ...model, blower: { ...model.blower, points } };
};

/** Trees of up to three levels, with leaks, slack duct, registers at any of their ends, and rooms with several ways. */
export const trees = fc
  .record({
    trunks: fc.array(
      fc.record({
        diameter: fc.double({ min: 0.15, max: 0.35, noNaN: true }),
        length: fc.double({ min: 0.5, max: 8, noNaN: true }),
        leakage: fc.double({ min: 0, max: 0.15, noNaN: true }),
        on: fc.nat(),
      }),
      { minLength: 1, maxLength: 4 },
    ),
    ways: fc.array(
      fc.record({
        diameter: fc.double({ min: 0.1, max: 0.25, noNaN: true }),
        length: fc.double({ min: 0.5, max: 12, noNaN: true }),
        loss: fc.double({ min: 0, max: 3, noNaN: true }),
        factor: fc.double({ min: 1, max: 6, noNaN: true }),
        leakage: fc.double({ min: 0, max: 0.1, noNaN: true }),
        resistance: fc.double({ min: 50, max: 6000, noNaN: true }),
        on: fc.nat(),
        room: fc.nat({ max: 7 }),
      }),
      { minLength: 2, maxLength: 9 },
    ),
    shares: fc.array(fc.double({ min: 0.3, max: 1.8, noNaN: true }), { minLength: 8, maxLength: 8 }),
  })
  .map(({ trunks, ways, shares }) => {
    const trunkSections = trunks.map(({ on, ...t }, i) =>
      section(`trunk-${i}`, {
        ...t,
        area: (Math.PI * t.diameter ** 2) / 4,
        ...(i > 0 ? { from: `trunk-${on % i}` } : {}),
      }),
    );
    const waySections = ways.map((w, i) =>
      section(`way-${i}`, {
        diameter: w.diameter,
        length: w.length,
        lossCoefficient: w.loss,
        frictionFactor: w.factor,
        leakage: w.leakage,
        from: `trunk-${w.on % trunks.length}`,
      }),
    );
    // Every trunk ends somewhere: one without a way behind it gets a register of its own.
    const bare = trunkSections.filter((t) => ![...trunkSections, ...waySections].some((x) => x.from === t.id));
    return {
      model: house(
        [...trunkSections, ...waySections],
        [
          ...ways.map((w, i) => terminal(`reg-${i}`, `way-${i}`, `room-${w.room}`, w.resistance)),
          ...bare.map((t) => terminal(`reg-${t.id}`, t.id, 'room-0', 800)),
        ],
      ),
      shares: Object.fromEntries(shares.map((s, i) => [`room-${i}`, s])),
    };
  });
