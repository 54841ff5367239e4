import type { JSX } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';

/** True while the page is put onto paper: then everything is drawn, wherever it stands. */
export const onPaper = { now: false };

/**
 * A picture that is drawn when it comes near the window: three hundred drawings of a thousand strokes each would hold the page for
 * seconds. Its place is there from the beginning, so that nothing moves.
 */
export function Lazy({ width, height, name, draw }: { readonly width: number; readonly height: number; readonly name: string; readonly draw: () => JSX.Element }): JSX.Element {
  const [near, setNear] = useState(false);
  const place = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const at = place.current;
    if (!at || near) return;
    const watch = new IntersectionObserver((seen) => seen.some(({ isIntersecting }) => isIntersecting) && setNear(true), { rootMargin: '600px' });
    watch.observe(at);
    return () => watch.disconnect();
  }, [near]);
  if (near || onPaper.now) return draw();
  return (
    <div ref={place} role="img" aria-label={name} class="not-yet-drawn">
      <svg viewBox={`0 0 ${String(width)} ${String(height)}`} aria-hidden="true" focusable="false" />
    </div>
  );
}
