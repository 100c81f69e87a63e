/**
 * Breaks blocks into lines and pages.
 *
 * @module
 */
export type { Bookmark, Page, PagedDocument, StructureElement } from './paged-document.ts';
