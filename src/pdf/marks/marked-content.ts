import type { PageTags } from '../tags/open-tags.ts';
import { printText } from '../pdf-text.ts';
import type { ContentStream } from './content-stream.ts';

/** What marks belong to: an element of the text, or an artifact, which is no part of it. */
export type Owner =
  | { readonly kind: 'element'; readonly element: number }
  | { readonly kind: 'artifact'; readonly artifact: 'pagination' | 'layout' };

/**
 * The marked content of a page (ISO 32000-1, 14.6). One sequence is open at a time and none stands
 * inside another, so that each mark belongs to exactly one owner; marks of the same owner that
 * follow each other share a sequence.
 */
export interface MarkedContent {
  /** What is drawn next belongs to this owner. Throws inside a spoken stretch of another. */
  readonly belongTo: (owner: Owner) => void;
  /** Begins a stretch for which a text stands; the owner has been named before. */
  readonly speak: (text: string) => void;
  readonly endSpeaking: () => void;
  /** Ends the sequence that is open, at the end of the page. */
  readonly close: () => void;
}

const artifactTypes = { pagination: 'Pagination', layout: 'Layout' } as const;

/** Marked content of a page on which nothing stands yet. */
export function openMarkedContent(
  content: ContentStream,
  tags: PageTags,
): MarkedContent {
  let open: Owner | undefined;
  let isSpeaking = false;
  const close = (): void => {
    if (open !== undefined) content.add('EMC');
    open = undefined;
  };
  return {
    belongTo: (owner) => {
      if (open !== undefined && isSame(open, owner)) return;
      if (isSpeaking)
        throw new RangeError('A group with actual text holds marks of two owners.');
      close();
      content.add(beginning(owner, tags));
      open = owner;
    },
    speak: (text) => {
      content.add(`/Span <</ActualText ${printText(text)}>> BDC`);
      isSpeaking = true;
    },
    endSpeaking: () => {
      content.add('EMC');
      isSpeaking = false;
    },
    close,
  };
}

function beginning(owner: Owner, tags: PageTags): string {
  switch (owner.kind) {
    case 'artifact':
      return `/Artifact <</Type /${artifactTypes[owner.artifact]}>> BDC`;
    case 'element': {
      const { type, mcid } = tags.addContent(owner.element);
      return `/${type} <</MCID ${mcid}>> BDC`;
    }
  }
}

function isSame(one: Owner, other: Owner): boolean {
  return one.kind === 'element'
    ? other.kind === 'element' && one.element === other.element
    : other.kind === 'artifact' && one.artifact === other.artifact;
}
