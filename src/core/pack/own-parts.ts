/**
 * The parts of a page that a library may put in place of the usual ones, each in `layouts/<part>.tsx` beside its `library.yaml`:
 * what stands in the head of every page, what stands at its foot, and how the library's first page begins.
 */
export const ownParts = ['masthead', 'footer', 'welcome'] as const;
export type OwnPart = (typeof ownParts)[number];
