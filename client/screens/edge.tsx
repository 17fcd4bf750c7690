import { useEffect, useRef } from 'preact/hooks';
import type { Mode } from '../state/session.ts';

export type ListenToLevel = (report: (level: number) => void) => void;

/** The field's edge: its shape tells what the page is doing, its length how loud it is heard. */
export function Edge({ mode, onLevel }: { mode: Mode['kind']; onLevel: ListenToLevel }) {
  const edge = useRef<HTMLDivElement>(null);
  useEffect(() => {
    onLevel((level) => edge.current?.style.setProperty('--level', level.toFixed(2)));
  }, [onLevel]);
  return (
    <div class="edge" data-edge={mode} ref={edge} aria-hidden="true">
      <i />
      <i />
      <i />
    </div>
  );
}
