/** How often a test with random cases tries: few times in an ordinary run, and as often as somebody wants, `BOOKFELLOW_TRIES=10 npx vitest run …`. */
export function tries(usual: number): number {
  const times = Number(process.env['BOOKFELLOW_TRIES'] ?? '1');
  return Math.round(usual * (Number.isFinite(times) && times > 0 ? times : 1));
}
