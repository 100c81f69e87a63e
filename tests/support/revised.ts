import { writeBag } from '../../src/bag/index.ts';

/** A bag of a project folder, its files given as texts by path. */
export function bagOf(files: Readonly<Record<string, string>>): Promise<Uint8Array> {
  return writeBag({
    payload: Object.entries(files).map(([path, text]) => ({
      path: `definition/${path}`,
      bytes: new TextEncoder().encode(text),
    })),
    info: [],
  });
}

const beam = (mark: string, loads: string): string =>
  `mark: ${mark}
kind: beam
points: { A: 0 ft, B: 6 ft, C: 21 ft }
supports: { A: pin, C: roller }
loads: [ ${loads} ]
`;

/** What the files of a small project say; S2 is carried by S4, S3 stands alone. */
export interface Stage {
  readonly size?: string;
  readonly status?: string;
  /** More keys of `project:`, one a line. */
  readonly more?: string;
  readonly prepared?: string;
  readonly checked?: string;
  readonly revisions?: readonly string[];
}

/** The files of that project, by path. */
export function stageFiles({
  size = '8.4 kip',
  status = 'issued',
  more = '',
  prepared = '2031-04-02',
  checked = '2031-04-03',
  revisions = ['{ mark: B, date: 2031-04-04 }'],
}: Stage = {}): Readonly<Record<string, string>> {
  return {
    'project.yaml': `project:
  number: "2031-077"
  title: Lower Weir Stage
  status: ${status}
${more}
people:
  prepared: { name: A. Corrie, initials: AC, date: ${prepared} }
  checked: { name: R. Tamsin, initials: RT, date: ${checked} }
revisions: [ ${revisions.join(', ')} ]
units: us
`,
    'members/s2.yaml': beam('S2', `{ point: ${size}, at: B }`),
    'members/s3.yaml': beam('S3', '{ point: 0.2 kip, at: B }'),
    'members/s4.yaml': beam('S4', '{ reaction: S2.C, at: B }'),
  };
}

/** The same a revision later, with a heavier load on S2. */
export function laterFiles(stage: Stage = {}): Readonly<Record<string, string>> {
  return stageFiles({
    size: '9.6 kip',
    prepared: '2031-05-01',
    more: '  supersedes: { number: "2031-077", revision: B, bag: ../kept/B.zip }',
    revisions: ['{ mark: B, date: 2031-04-04 }', '{ mark: C, date: 2031-05-04 }'],
    ...stage,
  });
}

/** Files of a folder as a world takes them. */
export function inFolder<T>(
  folder: string,
  files: Readonly<Record<string, T>>,
): Readonly<Record<string, T>> {
  return Object.fromEntries(
    Object.entries(files).map(([path, content]) => [`${folder}/${path}`, content]),
  );
}
