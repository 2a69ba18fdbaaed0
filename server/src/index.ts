export type { Served } from './serveApp.ts';
export { PortBusy, serveApp } from './serveApp.ts';
