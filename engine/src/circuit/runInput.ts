import type { ResolvedProject } from '@kneewall/project';

export type RunInput = ResolvedProject['routes']['wires']['outdoor'];
