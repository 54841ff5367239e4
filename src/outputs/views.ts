import type { Ground, Related as HowRelated } from '../core/find/alike.ts';
import type { Finding } from '../core/finding.ts';
import type { Library } from '../core/pack/library.ts';
import type { OwnPart } from '../core/pack/own-parts.ts';
import type { Caption } from '../core/pack/captions.ts';
import type { StackPack } from '../core/pack/stack-pack.ts';
import type { RetiredPack } from '../core/pack/retired.ts';
import type { PlannedPack } from '../core/plan/plan.ts';
import type { Facets, QualityTotals } from './quality-figures.ts';

/**
 * What a layout is given: plain values, worked out before, so that a layout only shows them.
 * Every address is relative to the root of the site, without a leading slash: `packs/hen/`.
 */

/** One file made of a picture. Width and height in pixels. */
export interface PictureSize {
  readonly url: string;
  readonly width: number;
}

/** A picture of a pack as published: upright, without metadata, in the widths used. */
export interface BuiltPicture {
  readonly file: string;
  readonly alt: string;
  readonly decorative: boolean;
  readonly credit: string | undefined;
  readonly stop: string | undefined;
  readonly width: number;
  readonly height: number;
  readonly webp: readonly PictureSize[];
  readonly jpeg: readonly PictureSize[];
}

/** A pack's recording as published: the film itself, or only where it is kept. */
export interface BuiltRecording {
  readonly film: { readonly url: string; readonly type: 'video/webm' | 'video/mp4'; readonly bytes: number; readonly captionsUrl: string } | undefined;
  /** Where the film is kept when it is not part of the site, behind a school's login for instance. */
  readonly link: string | undefined;
  readonly captions: readonly Caption[];
  readonly permission: string;
}

/** A pack ready to be shown: planned, with its pictures, its body as HTML and its other languages. */
export interface ShownPack {
  readonly pack: PlannedPack;
  readonly pictures: readonly BuiltPicture[];
  readonly recording: BuiltRecording | undefined;
  /** HTML made from the pack's Markdown by `core/pack/markdown.ts`; safe to set as it is. Headings begin at h3. */
  readonly bodyHtml: string;
  /** Addresses of its pages. */
  readonly urls: PackUrls;
  /** Its sheets as PDF, in the order in which they are offered; none when they were not made. */
  readonly papers: readonly Paper[];
  /** All of it as one folder in a zip; undefined when it was not made. Bytes of the zip. */
  readonly folder?: { readonly url: string; readonly bytes: number };
  /** The same book's packs, this one included, by language: their language and addresses. */
  readonly versions: readonly { readonly language: string; readonly urls: PackUrls }[];
  /** The companion it was made from and those made from it, where they are in this library. */
  readonly lineage?: { readonly parent: Related | undefined; readonly forks: readonly Related[] };
}

/** Another companion, as a page links to it. */
export interface Related {
  readonly title: string;
  readonly language: string;
  readonly url: string;
  /** Its school, where one is told. */
  readonly from: string | undefined;
}

/** What a pack is printed as. */
export const paperKinds = ['lesson', 'substitute', 'booklet', 'letter', 'cards'] as const;
export type PaperKind = (typeof paperKinds)[number];

/** A sheet of a pack as it lies in the site. */
export interface Paper {
  readonly kind: PaperKind;
  readonly url: string;
  readonly pages: number;
  readonly bytes: number;
}

export interface PackUrls {
  readonly family: string;
  readonly booklet: string;
  readonly lesson: string;
  /** Only packs with a recording have this page. */
  readonly recording: string;
}

/** What every page is told about itself and the site around it. */
export interface PageContext {
  readonly library: Library;
  /** Language of the interface and of the page (`<html lang>`). */
  readonly language: string;
  readonly url: string;
  /** This page in other languages, itself included; empty when there is only one. */
  readonly alternates: readonly { readonly language: string; readonly url: string }[];
  /** Files of the site whose names hold a hash of their content. */
  readonly assets: Assets;
  /** Parts that the library puts in place of the usual ones. */
  readonly own?: OwnLayouts | undefined;
}

/** For each part that a library has of its own: what stands in it on a page, as HTML that has been looked at. */
export type OwnLayouts = Readonly<Partial<Record<OwnPart, (page: Page) => string>>>;

/** The library's logo as it is shown, in CSS pixels, for light screens and, where it needs another file, for dark ones. */
export interface BuiltLogo {
  readonly light: string;
  readonly dark: string | undefined;
  readonly width: number;
  readonly height: number;
}

export interface Assets {
  /** The whole of the styles, for every kind of page that has no sheet of its own in `ownStyles`: `screen-family`. */
  readonly css: string;
  readonly printCss: string;
  readonly ownStyles?: Readonly<Record<string, string>>;
  /** Scripts by the name of their source: `booklet`, `lesson`. Missing ones are not built yet. */
  readonly scripts: Readonly<Record<string, string>>;
  /** Of each script the parts that it loads at once, so that a page can ask for them together; `booklet-es`: of a booklet in Spanish as well. */
  readonly preload?: Readonly<Record<string, readonly string[]>>;
  /** Files that a page with a script or style may load later: letters, and parts of scripts. */
  readonly later: readonly string[];
  /** Scripts of the form that makes packs, with all that they load at once or later: what it needs to work without a network. */
  readonly ofMaker?: readonly string[];
  readonly logo?: BuiltLogo | undefined;
  /** Letters of the Arabic script, which only pages that have such letters load. */
  readonly arabicLetters?: readonly string[];
}

export interface LibraryView {
  readonly kind: 'library';
  /** Packs in the page's language, in a large library those that were looked over last; then those that exist only in others. */
  readonly packs: readonly ShownPack[];
  /** How many packs there are in the page's language. */
  readonly count: number;
  readonly elsewhere: readonly ShownPack[];
}
export interface PackView {
  readonly kind: 'family' | 'booklet' | 'lesson';
  readonly shown: ShownPack;
}
/** The recording that waits at each stop. */
export interface RecordingView {
  readonly kind: 'recording';
  readonly shown: ShownPack;
  readonly recording: BuiltRecording;
}
/** What is told of one pack on the page about quality. */
export interface QualityRow {
  readonly shown: ShownPack;
  readonly findings: readonly Finding[];
  /** Id of its entry on the page. */
  readonly id: string;
  readonly facets: Facets;
}

export interface QualityView {
  readonly kind: 'quality';
  /** Which page of the list this is, from 1, and the addresses of all. */
  readonly number: number;
  readonly numbered: readonly string[];
  /** The packs of this page, in the order of their titles. */
  readonly rows: readonly QualityRow[];
  /** Of the whole library. */
  readonly totals: QualityTotals;
}
/** A book that several packs are about, in one language. */
export interface SameBookCase {
  /** In the order of their titles. The first few stand beside each other; the others are named. */
  readonly packs: readonly ShownPack[];
  readonly others: readonly ShownPack[];
  readonly grounds: readonly Ground[];
  /** Questions that stand in two of them or more, word for word or nearly. */
  readonly shared: readonly string[];
}

/** Two packs of one book that nobody has to settle, and why. */
export interface RelatedPacks {
  readonly first: ShownPack;
  readonly second: ShownPack;
  readonly how: HowRelated;
}

/** Packs of one book beside each other, for whoever settles which of them stay. */
export interface SameBookView {
  readonly kind: 'same-book';
  /** Which page of the cases this is, from 1, and the addresses of all. */
  readonly number: number;
  readonly numbered: readonly string[];
  readonly cases: readonly SameBookCase[];
  /** Cases on all pages. */
  readonly count: number;
  /** On the first page alone. */
  readonly related: readonly RelatedPacks[];
}

/** Packs for each grade, in the order of the schema, that serve one skill. */
export interface SkillRow {
  readonly skill: string | undefined;
  readonly byGrade: readonly number[];
}
export interface SkillTable {
  readonly language: string;
  readonly skills: readonly SkillRow[];
  /** Skills that are not named, packs that name none, and all packs. */
  readonly others: SkillRow | undefined;
  readonly without: SkillRow | undefined;
  readonly all: SkillRow;
}
/** What one school or person would be written about. */
export interface OwnerRow {
  /** Empty for the library itself. */
  readonly owner: string;
  readonly contact: string | undefined;
  readonly packs: number;
  readonly keptOff: number;
  readonly byLevel: Readonly<Record<Finding['level'], number>>;
  readonly told: readonly { readonly pack: Related; readonly finding: Finding }[];
  readonly more: number;
}
/** For whoever looks after the library. */
export interface LibrarianView {
  readonly kind: 'librarian';
  /** Which page this is, from 1, and the addresses of all. */
  readonly number: number;
  readonly numbered: readonly string[];
  readonly owners: readonly OwnerRow[];
  /** The whole library, on the first page. */
  readonly sum:
    | {
        readonly packs: number;
        /** What happened, the latest first: on which day, as 2026-09-01. */
        readonly news: readonly { readonly pack: Related; readonly day: string; readonly what: 'came in' | 'looked over' | 'taken out' }[];
        readonly moreNews: number;
        readonly keptOff: readonly { readonly owner: string; readonly packs: number }[];
        readonly past: readonly { readonly pack: Related; readonly day: string }[];
        readonly morePast: number;
        /** Packs that name no day of review. */
        readonly never: number;
        readonly coverage: readonly SkillTable[];
      }
    | undefined;
}
/** The stack of booklets that came back. */
export interface StackView {
  readonly kind: 'stack';
  /** What the page carries of the packs; undefined where the library is too large for it. */
  readonly packs: readonly StackPack[] | undefined;
}
/** The form that makes a pack. */
export interface MakerView {
  readonly kind: 'maker';
  /** Packs that may be copied: those in the page's language first. */
  readonly copies: readonly ShownPack[];
}
/** How a pack made with the form is handed to whoever runs the library. */
export interface HandOverView {
  readonly kind: 'hand-over';
}
/** The search over the packs of all languages. */
export interface FindView {
  readonly kind: 'find';
  /** Where the index of each language lies, and of how many packs it is. */
  readonly indexes: readonly { readonly language: string; readonly folder: string; readonly packs: number }[];
  /** Packs in the page's own language. */
  readonly count: number;
}

export const browseGroups = ['letter', 'grade', 'book', 'feeling', 'skill', 'school'] as const;
export type BrowseGroup = (typeof browseGroups)[number];

/** A line of the index: a grade, a feeling, a letter, with the packs that stand there. */
export interface BrowseList {
  readonly group: BrowseGroup;
  /** A grade as the schema names it, a kind of book, a family of feelings; for the other groups the text itself. */
  readonly key: string;
  /** Its address below the language's root; undefined in a small library, where the index itself names the packs. */
  readonly path: string | undefined;
  readonly packs: readonly ShownPack[];
}

/** The index: all lines of it, or in a large library also one line's packs, page by page. */
export interface BrowseView {
  readonly kind: 'browse';
  readonly lists: readonly BrowseList[];
  readonly others: readonly { readonly language: string; readonly packs: number }[];
  readonly count: number;
}
export interface BrowseListView {
  readonly kind: 'browse-list';
  readonly list: BrowseList;
  readonly packs: readonly ShownPack[];
  /** Which page of the list this is, from 1, and the paths of all below the language's root. */
  readonly number: number;
  readonly paths: readonly string[];
}

/** A page of the library's own text: about, privacy, accessibility, how to read at home. */
export interface ProseView {
  readonly kind: 'prose';
  readonly name: string;
  readonly title: string;
  readonly description: string;
  readonly html: string;
}
/** What there is for other programs; the addresses of one pack stand for all. */
export interface ProgramsView {
  readonly kind: 'programs';
  readonly example: { readonly page: string; readonly json: string; readonly text: string } | undefined;
  /** The chapters of a pack with a recording, where there is one. */
  readonly stops: string | undefined;
}
/** What is left of a companion that was taken out of the library. */
export interface ShownRetired {
  readonly pack: RetiredPack;
  readonly urls: PackUrls;
  /** What takes its place, where that is in this library. */
  readonly instead: Related | undefined;
  /** What takes its place, where it is kept by somebody else. */
  readonly elsewhere: string | undefined;
  /** The same book's companions in other languages that are still here. */
  readonly stillIn: readonly Related[];
}

/** What is left at an address of a companion that was taken out. */
export interface RetiredView {
  readonly kind: 'retired';
  readonly part: 'family' | 'booklet' | 'lesson' | 'recording';
  readonly retired: ShownRetired;
}
/** The page a visitor gets for an address that is not there. */
export interface MissingView {
  readonly kind: 'missing';
}

/** The page that a reader without a network gets for a page that is not saved. */
export interface UnsavedView {
  readonly kind: 'unsaved';
}

export type View =
  | LibrarianView
  | RetiredView
  | FindView
  | BrowseView
  | BrowseListView
  | StackView
  | MakerView
  | HandOverView
  | UnsavedView
  | LibraryView
  | PackView
  | RecordingView
  | QualityView
  | SameBookView
  | ProseView
  | ProgramsView
  | MissingView;
export type PageOf<V extends View = View> = PageContext & { readonly view: V };
export type Page = PageOf;

/** A text file of the site. */
export interface Output {
  readonly url: string;
  readonly text: string;
  /** The pack that the text is made of, when it is made of nothing else: while that stays as it is, the text need not be asked for. */
  readonly of?: ShownPack;
}

export interface OutputInput {
  readonly library: Library;
  readonly shown: readonly ShownPack[];
  readonly retired?: readonly ShownRetired[];
  readonly pages: readonly Page[];
}
