import { useEffect } from 'react';
import { useServices } from '../services.ts';

/** Ctrl+Z and Ctrl+Shift+Z, except inside a box whose own undo is wanted. */
export function useUndoKeys(): void {
  const { session } = useServices();
  useEffect(() => {
    const pressed = (event: KeyboardEvent) => {
      if (!(event.ctrlKey || event.metaKey) || event.key.toLowerCase() !== 'z') return;
      const within = event.target;
      const isTyping =
        (within instanceof HTMLInputElement && within.type === 'text') || within instanceof HTMLTextAreaElement;
      if (isTyping && within.dataset.draft === 'yes') return;
      event.preventDefault();
      if (event.shiftKey) session.redo();
      else session.undo();
    };
    window.addEventListener('keydown', pressed);
    return () => window.removeEventListener('keydown', pressed);
  }, [session]);
}
