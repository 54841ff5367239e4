import type { JSX } from 'preact';
import { faceGeometry, penWidths, type FaceOf } from '../../src/outputs/face.ts';

/** A face in the ink around it. Decoration: its word always stands beside it. */
export function Face({ feeling }: { readonly feeling: FaceOf }): JSX.Element {
  return (
    <svg class="face" viewBox="0 0 100 100" aria-hidden="true" focusable="false" fill="none" stroke="currentColor" stroke-linecap="round" stroke-linejoin="round">
      <FaceStrokes feeling={feeling} />
    </svg>
  );
}

/** The strokes alone, for a picture that holds faces. */
export function FaceStrokes({ feeling }: { readonly feeling: FaceOf }): JSX.Element {
  return (
    <>
      {faceGeometry(feeling).map(({ pen, d }) =>
        pen === 'ink' ? <path d={d} fill="currentColor" stroke="none" /> : <path class={pen === 'shape' ? 'skin' : undefined} d={d} stroke-width={penWidths[pen]} />,
      )}
    </>
  );
}
