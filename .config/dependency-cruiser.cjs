const storeys = require('./storeys.cjs');

const isFile = (room) => room === 'pipeline' || room === 'index';
const pathOf = (room) => (isFile(room) ? `^src/${room}\\.ts$` : `^src/${room}/`);

// Every room may see itself and any room on a lower storey; all else is refused.
const looksDown = storeys.slice(0, -1).flatMap((rooms, level) =>
  rooms.map((room) => {
    const refused = storeys
      .slice(level)
      .flat()
      .filter((other) => other !== room);
    return {
      name: `${room}-looks-down`,
      severity: 'error',
      from: { path: pathOf(room) },
      to: { path: `(${refused.map(pathOf).join('|')})` },
    };
  }),
);

const guarded = {
  yaml: ['project'],
  katex: ['typeset'],
  fontkit: ['font'],
  handlebars: ['report'],
  saxes: ['report'],
  hyphen: ['layout'],
  'tex-linebreak': ['layout'],
  pdfkit: ['pdf'],
  fflate: ['pdf'],
  yazl: ['bag'],
  yauzl: ['bag'],
};
const onlyRoomUsesPackage = Object.entries(guarded).map(([name, rooms]) => ({
  name: `only-${rooms.join('-')}-uses-${name}`,
  severity: 'error',
  from: { path: '^src/', pathNot: rooms.map(pathOf) },
  to: { path: `node_modules/(@types/)?${name}/` },
}));

module.exports = {
  forbidden: [
    ...looksDown,
    ...onlyRoomUsesPackage,
    {
      name: 'enter-by-the-door',
      comment: 'Another room is entered through its index.ts alone.',
      severity: 'error',
      from: { path: '^src/([^/]+)/' },
      to: { path: '^src/[^/]+/.+', pathNot: ['^src/$1/', '^src/[^/]+/index\\.ts$'] },
    },
    {
      name: 'top-enters-by-the-door',
      severity: 'error',
      from: { path: '^src/[^/]+\\.ts$' },
      to: { path: '^src/[^/]+/.+', pathNot: '^src/[^/]+/index\\.ts$' },
    },
    {
      name: 'cli-uses-the-public-face',
      severity: 'error',
      from: { path: '^src/cli/' },
      to: {
        path: '^src/',
        pathNot: [
          '^src/cli/',
          '^src/index\\.ts$',
          '^src/(world|diagnostics)/index\\.ts$',
        ],
      },
    },
    {
      name: 'only-world-and-cli-touch-the-machine',
      severity: 'error',
      from: { path: '^src/', pathNot: '^src/(world|cli)/' },
      to: { dependencyTypes: ['core'] },
    },
    { name: 'no-cycles', severity: 'error', from: {}, to: { circular: true } },
    {
      name: 'no-orphans',
      severity: 'error',
      from: { orphan: true, pathNot: ['\\.d\\.ts$', '^src/cli/main\\.ts$'] },
      to: {},
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    enhancedResolveOptions: {
      extensions: ['.ts', '.js', '.json'],
      exportsFields: ['exports'],
      conditionNames: ['import', 'types', 'default'],
    },
  },
};
