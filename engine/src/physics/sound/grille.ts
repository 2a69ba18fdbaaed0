import { octaveBands } from './bands.ts';

/** A grille or register with air passing: face area m², pressure it takes Pa, velocity in the duct behind it m/s. */
export type SoundingGrille = { readonly area: number; readonly pressure: number; readonly velocity: number };

/** Hz for each m/s in the duct, at which a grille is loudest; what the spectrum loses for each octave below and above, dB. */
const peakPerVelocity = 160;
const slopeBelow = 3;
const slopeAbove = 5;

/** Sound power in a grille's loudest octave, dB re 1 pW: 10 + 10 log A + 30 log Δp. Source: `sound.grille`. */
export const grillePeak = ({ area, pressure }: SoundingGrille): number =>
  10 + 10 * Math.log10(area) + 30 * Math.log10(pressure);

/**
 * Sound power of a grille by octave band, dB re 1 pW, falling away on both sides of the frequency at which it is loudest.
 * Not for long slots. All inputs above zero. Source: `sound.grille` (CIBSE Guide B, 2005, 5.A2.5).
 */
export function grilleSound(grille: SoundingGrille): number[] {
  const peak = peakPerVelocity * grille.velocity;
  const loudest = grillePeak(grille);
  return octaveBands.map((band) => {
    const octaves = Math.log2(band / peak);
    return loudest - (octaves < 0 ? -slopeBelow * octaves : slopeAbove * octaves);
  });
}

/** dB that a grille's sound rises when its flow does: 60 log of the ratio. Source: `sound.velocity`. */
export const soundRise = (flow: number, reference: number): number => 60 * Math.log10(flow / reference);
