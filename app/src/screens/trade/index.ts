export { TradeScreen } from './TradeScreen.tsx';
export { TradesScreen } from './TradesScreen.tsx';
