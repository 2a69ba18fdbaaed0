export * from './ampacity.ts';
export * from './fill.ts';
export * from './gauges.ts';
export * from './grounding.ts';
export * from './ownSupply.ts';
export * from './protection.ts';
export * from './tables.ts';
export * from './voltageDrop.ts';
