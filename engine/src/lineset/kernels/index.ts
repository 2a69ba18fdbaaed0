export * from './bends.ts';
export * from './charge.ts';
export * from './outdoorSound.ts';
export * from './roomRule.ts';
export * from './tube.ts';
export * from './wind.ts';
