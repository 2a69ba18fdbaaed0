import { useEffect, useState } from 'react';

/** Keeps the screen on while it is ticked, and asks again whenever the page comes back: the lock goes when it is hidden. */
export function ScreenOn() {
  const [on, setOn] = useState(false);
  const able = 'wakeLock' in navigator;
  useEffect(() => {
    if (!on || !able) return;
    let lock: WakeLockSentinel | undefined;
    let over = false;
    const ask = () => {
      if (document.visibilityState !== 'visible') return;
      navigator.wakeLock
        .request('screen')
        .then((l) => {
          if (over) void l.release();
          else lock = l;
        })
        .catch(() => setOn(false));
    };
    ask();
    document.addEventListener('visibilitychange', ask);
    return () => {
      over = true;
      document.removeEventListener('visibilitychange', ask);
      void lock?.release();
    };
  }, [on, able]);
  if (!able) return <p className="card-note">This browser cannot keep the screen on.</p>;
  return (
    <label className="card-switch">
      <input type="checkbox" checked={on} onChange={(e) => setOn(e.target.checked)} />
      Keep the screen on
    </label>
  );
}
