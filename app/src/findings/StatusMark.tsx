import type { Status } from '@kneewall/engine';
import { statusWord } from '../words/words.ts';
import './StatusMark.css';

const outline: Readonly<Record<Status, string>> = {
  // A stop sign, a triangle, a broken ring, a full ring: told apart without colour, and upside down.
  fails: 'M7 1h6l6 6v6l-6 6H7l-6-6V7z',
  tight: 'M10 1.5 19 18H1z',
  unknown: 'M10 1.6a8.4 8.4 0 1 1 0 16.8 8.4 8.4 0 0 1 0-16.8z',
  ok: 'M10 1.6a8.4 8.4 0 1 1 0 16.8 8.4 8.4 0 0 1 0-16.8z',
};
const inside: Readonly<Record<Status, string>> = {
  fails: 'M6.2 6.2l7.6 7.6M13.8 6.2l-7.6 7.6',
  tight: 'M10 7v5M10 14.6v.6',
  unknown: 'M6 10h.6M9.7 10h.6M13.4 10h.6',
  ok: 'M5.6 10.4l3 3 5.8-6.4',
};

/** A status: always its word and its shape, and a colour for those who see it. */
export function StatusMark({ status, word = true }: { status: Status; word?: boolean }) {
  return (
    <span className={`status ${status}`}>
      <svg viewBox="0 0 20 20" aria-hidden="true" focusable="false">
        <path className="status-outline" d={outline[status]} />
        <path className="status-inside" d={inside[status]} />
      </svg>
      <span className={word ? '' : 'unseen'}>{statusWord[status]}</span>
    </span>
  );
}
