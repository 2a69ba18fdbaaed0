/** A kitchen bag of 66 by 91 cm on a hoop, filling from flat: s, and m³/s (75, 40 and 20 cfm). Source: `commissioning.bag-times`. */
const calibrated = [
  { seconds: 2, flow: 0.0353961 },
  { seconds: 4, flow: 0.0188779 },
  { seconds: 10, flow: 0.00943895 },
] as const;

/**
 * m³/s that fill that bag in so many seconds: straight in logarithms between the times it was calibrated at, since its
 * volume is not constant. Undefined outside 2 to 10 s, where a larger or smaller bag is needed.
 */
export function bagFlow(seconds: number): number | undefined {
  const above = calibrated.findIndex((c) => c.seconds >= seconds);
  const [a, b] = [calibrated[Math.max(0, above - 1)], calibrated[above]];
  if (!a || !b || seconds < a.seconds) return undefined;
  if (a === b) return a.flow;
  const share = Math.log(seconds / a.seconds) / Math.log(b.seconds / a.seconds);
  return a.flow * (b.flow / a.flow) ** share;
}

/** Share by which a bag's flow is off when its volume is known to a share and its time to some seconds (root of the sum of squares). */
export const bagError = (volumeShare: number, timeError: number, seconds: number): number =>
  Math.hypot(volumeShare, timeError / seconds);
