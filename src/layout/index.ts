/**
 * Breaks blocks into lines and pages.
 *
 * @module
 */
export { layOut } from './lay-out.ts';
export type { LayoutTools } from './lay-out.ts';
export type {
  Bookmark,
  Page,
  PagedDocument,
  StructureElement,
} from './paged-document.ts';
