/** dB(A) outside a window that somebody sleeps behind, at night. Source: `lineset.night`. */
export const nightMost = 40;
