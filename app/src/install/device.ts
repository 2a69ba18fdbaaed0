import { createContext, useContext } from 'react';
import type { AppWorker } from './appWorker.ts';
import type { KeepingAsk } from './keeping.ts';

/** What the browser does for the app on this device. */
export type Device = { readonly app: AppWorker; readonly keeping: KeepingAsk };

export const DeviceContext = createContext<Device | undefined>(undefined);

export function useDevice(): Device {
  const device = useContext(DeviceContext);
  if (!device) throw new Error('assert: a screen stands outside the app');
  return device;
}
