export const exceptions: ReadonlyMap<string, number> = new Map();
