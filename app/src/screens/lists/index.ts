export { BuyScreen } from '../buy/BuyScreen.tsx';
export { DoScreen } from './DoScreen.tsx';
export { ReadScreen } from './ReadScreen.tsx';
