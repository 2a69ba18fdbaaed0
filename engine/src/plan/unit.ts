import type { QuantityKind } from '@kneewall/project';
import { kinds } from '@kneewall/project/quantity';

/** The unit every number of a kind is in, as it is shown: `Pa`, `m³/s`. */
export const unitOf = (kind: QuantityKind): string => kinds[kind].unit;
