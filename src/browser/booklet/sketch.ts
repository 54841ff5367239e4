import { paper, type Mark } from '../../core/booklet/booklet-schema.ts';
import { paperColour, pathsOf, type Ink } from '../../core/booklet/drawing.ts';

/** The canvas of a drawing: shows marks, and turns the movements of a pen, a finger or a mouse into lines. */

/** A pen's line is kept in steps of at least this many units: finer ones cannot be seen. */
const leastStep = 3;

export interface Brush {
  readonly ink: Ink;
  readonly width: number;
}

/** Shows the marks as sharp as the screen can. Nothing is changed when the canvas has no room yet. */
export function show(canvas: HTMLCanvasElement, marks: readonly Mark[]): void {
  const pixels = Math.round(canvas.clientWidth * Math.max(1, devicePixelRatio));
  const context = canvas.getContext('2d');
  if (!context || pixels === 0) return;
  const high = Math.round((pixels * paper.height) / paper.width);
  if (canvas.width !== pixels || canvas.height !== high) {
    canvas.width = pixels;
    canvas.height = high;
  }
  const scale = pixels / paper.width;
  context.setTransform(scale, 0, 0, scale, 0, 0);
  context.fillStyle = paperColour;
  context.fillRect(0, 0, paper.width, paper.height);
  for (const mark of marks) draw(context, mark);
}

function draw(context: CanvasRenderingContext2D, mark: Mark): void {
  context.lineCap = 'round';
  context.lineJoin = 'round';
  for (const { d, ink, width, filled, move } of pathsOf(mark)) {
    context.save();
    if (move) {
      context.translate(move[0], move[1]);
      context.scale(move[2], move[2]);
    }
    context.strokeStyle = ink;
    context.lineWidth = width;
    const path = new Path2D(d);
    context.stroke(path);
    if (filled) {
      context.fillStyle = ink;
      context.fill(path);
    }
    context.restore();
  }
}

/** Where on the paper a pointer is, in the paper's units. */
export function placeOnPaper(canvas: HTMLCanvasElement, { clientX, clientY }: { readonly clientX: number; readonly clientY: number }): readonly [x: number, y: number] {
  const box = canvas.getBoundingClientRect();
  const within = (value: number, most: number) => Math.round(Math.min(most, Math.max(0, value)));
  return [within(((clientX - box.left) / box.width) * paper.width, paper.width), within(((clientY - box.top) / box.height) * paper.height, paper.height)];
}

export interface Hand {
  /** What to draw with, or undefined while a thing is set down by taps. */
  readonly brush: () => Brush | undefined;
  /** Called while a line grows, with the line so far. */
  readonly onGrow: (line: Mark) => void;
  /** Called once a line is finished, however it ended. */
  readonly onLine: (line: Mark) => void;
}

/** Follows one pointer at a time over the canvas; gives back how to stop, and how to finish a line that is under way. */
export function follow(canvas: HTMLCanvasElement, hand: Hand): { readonly stop: () => void; readonly finish: () => void } {
  let pointer: number | undefined;
  let points: number[] = [];
  let brush: Brush | undefined;
  const line = (): Mark | undefined => (brush && points.length > 0 ? { do: 'line', ink: brush.ink, width: brush.width, points: [...points] } : undefined);

  const add = (event: PointerEvent) => {
    const [x, y] = placeOnPaper(canvas, event);
    const last = points.length - 3;
    if (last >= 0 && Math.hypot(x - (points[last] ?? 0), y - (points[last + 1] ?? 0)) < leastStep) return;
    points.push(x, y, pressureOf(event));
  };
  const begin = (event: PointerEvent) => {
    brush = hand.brush();
    if (pointer !== undefined || !brush || event.button !== 0) return;
    pointer = event.pointerId;
    points = [];
    try {
      canvas.setPointerCapture(pointer);
    } catch {
      // A pointer that is gone already: its line is a dot.
    }
    add(event);
    const grown = line();
    if (grown) hand.onGrow(grown);
  };
  const go = (event: PointerEvent) => {
    if (event.pointerId !== pointer) return;
    // A button that was let go outside the window is told to nobody.
    if (event.buttons === 0) {
      finish();
      return;
    }
    const all = 'getCoalescedEvents' in event ? event.getCoalescedEvents() : [];
    for (const each of all.length > 0 ? all : [event]) add(each);
    const grown = line();
    if (grown) hand.onGrow(grown);
  };
  const finish = () => {
    const done = pointer === undefined ? undefined : line();
    pointer = undefined;
    points = [];
    if (done) hand.onLine(done);
  };
  const end = (event: PointerEvent) => {
    if (event.pointerId === pointer) finish();
  };
  const ends = ['pointerup', 'pointercancel', 'lostpointercapture'] as const;
  canvas.addEventListener('pointerdown', begin);
  canvas.addEventListener('pointermove', go);
  for (const each of ends) canvas.addEventListener(each, end);
  return {
    finish,
    stop: () => {
      finish();
      canvas.removeEventListener('pointerdown', begin);
      canvas.removeEventListener('pointermove', go);
      for (const each of ends) canvas.removeEventListener(each, end);
    },
  };
}

/** 0 to 100. A mouse says a half; a finger that says nothing or everything knows none, so it gets a half too. */
function pressureOf({ pointerType, pressure }: PointerEvent): number {
  const known = pointerType === 'pen' || (pressure > 0 && pressure < 1);
  return known ? Math.round(pressure * 100) : 50;
}
