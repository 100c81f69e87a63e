/**
 * Breaks blocks into lines and pages.
 *
 *     Report ── anchorPart ──▶ parts whose headings have anchors, and the bookmarks
 *            ── setPart ─────▶ bands: blocks/… one a kind, text by Knuth and Plass, table/…
 *            ── paginate ────▶ pages of bands, the cheapest of all ways to break a part
 *            ── countSheets ─▶ the sheet of each anchor; again from setPart until none changes
 *            ── placePage ───▶ marks at fixed places, each in a group of its element
 *
 * A band is a stretch of the column that is never split: a line of text, a line of an equation, a
 * row of a table, a figure. Bands know the room that they want above and below and what it costs
 * to begin a page with them; a page is never stretched. A part depends on others only through
 * the sheet numbers that it prints, so only the blocks that print one are set again.
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
