/** The parts whose code is fetched when it is needed. Once a booklet is open they are fetched in a quiet moment, so that they are there when the network is gone. */
export const parts = {
  draw: async () => (await import('./later.tsx')).Draw,
  feeling: async () => (await import('./later.tsx')).Feeling,
  grownUp: async () => (await import('./later.tsx')).GrownUpChoices,
  whole: async () => (await import('./later.tsx')).Whole,
  record: async () => (await import('./later.tsx')).Record,
  photo: async () => (await import('./later.tsx')).Photo,
  mine: async () => (await import('./mine.tsx')).Mine,
  kept: async () => (await import('./mine.tsx')).KeptAnswers,
} as const;

export function fetchParts(): void {
  const quiet = 'requestIdleCallback' in globalThis ? requestIdleCallback : (later: () => void) => setTimeout(later, 500);
  quiet(() => {
    for (const load of [parts.draw, parts.mine]) void load().catch(() => undefined);
  });
}
