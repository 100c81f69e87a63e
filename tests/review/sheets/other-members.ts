import { sheet, type Sheet } from './sheet.ts';
export const otherMembers: Readonly<Record<string, string>> = {};
export const otherSheets: readonly Sheet[] = [];
void sheet;
