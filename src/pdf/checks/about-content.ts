import type { Check, OpenedPage } from './opened-pdf.ts';

/** Content: everything painted belongs to one element or is an artifact (PDF/UA-1, 7.1), in colours that the output intent covers. */
export const aboutContent: Check = {
  about: 'content',
  find: ({ pages }) =>
    pages.flatMap((page) => [
      ...page.faults.map((fault) => `${fault} on page ${page.label}`),
      ...ownerFindings(page),
      ...[...page.operators]
        .filter((operator) => !knownOperators.has(operator))
        .map((operator) => `page ${page.label} uses the operator ${operator}`),
    ]),
};

/** All that the writer needs; the colours among them are grey, red, green and blue. */
const knownOperators: ReadonlySet<string> = new Set(
  'q Q cm w J j M d m l c v y h re S s f f* B B* b b* n W W* BT ET Td TD Tm T* Tf Tj TJ TL Tc Tw Tz Ts Tr g G rg RG Do BMC BDC EMC'.split(
    ' ',
  ),
);

function ownerFindings({ painted, label }: OpenedPage): readonly string[] {
  const findings = painted.flatMap(({ kind, marking }) => {
    const owners = marking.content.length + marking.artifacts;
    if (owners === 1) return [];
    const whose = owners === 0 ? 'nobody' : `${owners} owners`;
    return [`a ${kind} on page ${label} belongs to ${whose}`];
  });
  return [...new Set(findings)];
}
