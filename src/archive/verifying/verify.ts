import type { World } from '../../world/index.ts';
import type { Verification } from '../verification.ts';
import { lookAt } from './look-at.ts';
import type { PresentProgram, Subject } from './subject.ts';
import { verifyBag } from './verify-bag.ts';
import { verifyPdf } from './verify-pdf.ts';

/**
 * Verifies a bag or a bound PDF, told apart by their first bytes: whether it is as it was issued, and whether
 * the present version computes the same from the inputs inside. Nothing is worked again of what is damaged.
 * Writes nothing, closes what it opens, and never throws for what a file holds.
 */
export async function verify(
  world: World,
  path: string,
  program: PresentProgram,
): Promise<Verification> {
  const kind = path.toLowerCase().endsWith('.pdf') ? 'pdf' : 'bag';
  const refused = (message: string): Verification => ({
    path,
    kind,
    verdict: 'unreadable',
    damage: [{ message }],
    differences: [],
    remarks: [],
  });
  if (world.list(path) !== undefined) return refused('it is a folder');
  const found = lookAt(world, path);
  if ('problem' in found) return refused(found.problem);
  const { sha256, start } = found;
  const subject: Subject = { world, path, sha256, program };
  if (start.startsWith('PK')) return await verifyBag(subject);
  if (start.startsWith('%PDF-')) return await verifyPdf(subject);
  return { ...refused('it begins neither as a bag nor as a PDF does'), sha256 };
}
