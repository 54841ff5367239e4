/** The parts of a valibot schema that a walk over it needs. */
export interface Shape {
  readonly type: string;
  readonly wrapped?: Shape;
  readonly entries?: Readonly<Record<string, Shape>>;
  readonly item?: Shape;
  readonly value?: Shape;
  readonly options?: readonly string[];
  readonly pipe?: readonly unknown[];
}

/** The schema itself, without the mark that its field may be missing. */
export function unwrapped(shape: Shape): Shape {
  return shape.type === 'optional' && shape.wrapped ? unwrapped(shape.wrapped) : shape;
}
