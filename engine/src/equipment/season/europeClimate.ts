export type EuropeanClimate = 'average' | 'colder';

/** °C at which a climate's building needs its design load. */
export const europeanDesign: Readonly<Record<EuropeanClimate, number>> = { average: -10, colder: -22 };

/** Hours of the heating season at each whole °C from the design temperature to 15 °C. Source: `equipment.europe-season`. */
const hours: Readonly<Record<EuropeanClimate, readonly number[]>> = {
  average: [
    1, 25, 23, 24, 27, 68, 91, 89, 165, 173, 240, 280, 320, 357, 356, 303, 330, 326, 348, 335, 315, 215, 169, 151, 105,
    74,
  ],
  colder: [
    1, 6, 13, 17, 19, 26, 39, 41, 35, 52, 37, 41, 43, 54, 90, 125, 169, 195, 278, 306, 454, 385, 490, 533, 380, 228,
    261, 279, 229, 269, 233, 230, 243, 191, 146, 150, 97, 61,
  ],
};

export const europeanBins = (climate: EuropeanClimate): readonly { outdoor: number; hours: number }[] =>
  hours[climate].map((h, i) => ({ outdoor: europeanDesign[climate] + i, hours: h }));
