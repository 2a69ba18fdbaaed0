import { checkSource } from '../src/checkSource.ts';
import { source } from './measure.ts';

checkSource(source, 67);
