import { compareBytes } from '../key-tree.ts';
import { md5 } from '../md5.ts';
import { readAttachments } from '../reading/read-attachments.ts';
import type { ReadAttachment } from '../reading/read-attachments.ts';
import type { Check } from './opened-pdf.ts';

const relationships = ['Source', 'Data', 'Alternative', 'Supplement', 'Unspecified'];

/** Attachments: described, associated with the document, and whole (ISO 19005-3, 6.8). */
export const aboutAttachments: Check = {
  about: 'attachments',
  find: ({ file }) =>
    readAttachments(file).flatMap((attachment) =>
      attachmentFindings(attachment).map(
        (finding) => `the attachment ${attachment.name} ${finding}`,
      ),
    ),
};

function attachmentFindings(attachment: ReadAttachment): readonly string[] {
  const { bytes, mime, description, relationship, size, checkSum } = attachment;
  const isWhole = checkSum !== undefined && compareBytes(checkSum, md5(bytes)) === 0;
  const wanted: readonly (readonly [isRight: boolean, finding: string])[] = [
    [/^[^/\s]+\/[^/\s]+$/u.test(mime ?? ''), 'has no media type'],
    [(description ?? '') !== '', 'has no description'],
    [
      relationships.includes(relationship ?? ''),
      'does not say what it is to the document',
    ],
    [attachment.isAssociated, 'is not associated with the document'],
    [size === bytes.length, 'has another size than stated'],
    [isWhole, 'has another check sum than stated'],
  ];
  return wanted.flatMap(([isRight, finding]) => (isRight ? [] : [finding]));
}
