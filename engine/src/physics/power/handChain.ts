/** kWh of direct current a day for kWh a day of alternating current. Source: `power.handbook`. */
export const dailyDirect = (load: number, inverter: number): number => load / inverter;

/** kWh of battery for days without sun, by the share that may be used. Source: `power.handbook`. */
export const batteryFor = (daily: number, days: number, depth: number): number => (daily * days) / depth;

/** kW of panels for kWh a day, by hours of full sun and the share that losses leave. Source: `power.handbook`. */
export const arrayFor = (load: number, sunHours: number, kept: number): number => load / (sunHours * kept);

/** Hours that kWh of usable battery carry kWh a day of alternating current. Source: `power.handbook`. */
export const hoursToEmpty = (usable: number, inverter: number, daily: number): number =>
  (usable * inverter * 24) / daily;
