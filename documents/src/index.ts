export { csvCell, materialsCsv } from './materialsCsv.ts';
