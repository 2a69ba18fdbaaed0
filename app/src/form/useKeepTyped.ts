import { useEffect, useRef } from 'react';

/**
 * Keeps what is being typed when the page goes out of sight, is closed or loaded anew, or another screen is gone back
 * to: a phone put away, or its back button, leaves no box first.
 */
export function useKeepTyped(keep: () => void): void {
  const latest = useRef(keep);
  useEffect(() => {
    latest.current = keep;
  });
  useEffect(() => {
    const now = () => latest.current();
    const hidden = () => document.visibilityState === 'hidden' && now();
    document.addEventListener('visibilitychange', hidden);
    window.addEventListener('pagehide', now);
    // Comes before the address is read, so the box is still there.
    window.addEventListener('popstate', now);
    return () => {
      document.removeEventListener('visibilitychange', hidden);
      window.removeEventListener('pagehide', now);
      window.removeEventListener('popstate', now);
    };
  }, []);
}
