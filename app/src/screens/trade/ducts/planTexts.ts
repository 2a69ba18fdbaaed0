import type { DuctFact, FaceFact } from '@kneewall/documents';
import { lostWords, sizeWords } from '@kneewall/documents';
import { printQuantity, type System } from '@kneewall/project';

/** Pictures at least so wide have room for names, and for a grip at every section. px. */
export const roomy = 700;

/** What stands beside a duct, the fullest first; a phone gets no names. */
export const textsFor =
  (width: number, units: System) =>
  (duct: DuctFact): readonly (readonly string[])[] => {
    const size = sizeWords(duct.size, units);
    const flow = duct.flow === undefined ? [] : [printQuantity(duct.flow, 'flow', units)];
    const lost = duct.drop === undefined ? [] : [lostWords(duct.drop, units)];
    const short = [[`${duct.tag} · ${size}`, ...flow], [duct.tag]];
    return width < roomy ? short : [[`${duct.tag} ${duct.name}`, [size, ...flow, ...lost].join(' · ')], ...short];
  };

/** What stands beside a register: its flow, where the picture is wide enough for one more number. */
export const faceTexts =
  (width: number, units: System) =>
  (face: FaceFact): readonly (readonly string[])[] =>
    face.flow === undefined || width < roomy ? [] : [[printQuantity(face.flow, 'flow', units)]];
