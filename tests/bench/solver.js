// How long the solver takes for continuous beams of 25 to 400 spans, both ways and their comparison
// included, and how that grows. `npm run bench` builds first; `node tests/bench/solver.js 100` measures one size.
import { solveBeam, solverOf } from '../../dist/statics/index.js';

const asked = process.argv.slice(2).map(Number);
const sizes = asked.length > 0 ? asked : [25, 50, 100, 200, 400];
const rounds = 15;

/** A beam of so many unequal spans on rollers, a step of stiffness in every fifth, loads of every kind on each. */
function continuousBeam(spans) {
  const points = [];
  let x = 0;
  for (let index = 0; index <= spans; index += 1) {
    points.push({ name: `P${index}`, x });
    x += 5 + ((index * 7) % 4);
  }
  const end = points.at(-1).x;
  const along = { kind: 'force', direction: [1, 0] };
  const up = { kind: 'force', direction: [0, 1] };
  const supports = points.map(({ name, x }, index) => ({
    point: name,
    x,
    type: index === 0 ? 'pin' : 'roller',
    restraints: index === 0 ? [along, up] : [up],
  }));
  const steps = points.filter((_, index) => index % 5 === 4).map(({ x }) => x + 1.25);
  const cuts = [0, ...steps.filter((x) => x < end), end];
  const stiffness = cuts
    .slice(1)
    .map((to, index) => ({ from: cuts[index], to, EI: index % 2 === 0 ? 4e7 : 1e7 }));
  const loads = points.slice(0, -1).flatMap(({ x }, index) => [
    {
      id: `w${index}`,
      case: 'D',
      kind: 'distributed',
      from: x,
      to: points[index + 1].x,
      x1: 0,
      y1: -8e3,
      x2: 0,
      y2: -1e4,
    },
    { id: `p${index}`, case: 'D', kind: 'point', x: x + 2.25, fx: 0, fy: -3e4 },
  ]);
  return {
    kind: 'beam',
    points,
    supports,
    hinges: [],
    loads,
    cases: ['D'],
    stiffness,
  };
}

/** The middle of several times, in milliseconds of processor time of this process. */
function middleTime(work) {
  const times = Array.from({ length: rounds }, () => {
    const { user, system } = process.cpuUsage();
    work();
    const after = process.cpuUsage();
    return (after.user + after.system - user - system) / 1000;
  });
  return times.toSorted((a, b) => a - b)[Math.floor(rounds / 2)];
}

console.log(
  'Milliseconds of processor time; "first" is the first call in this process.\n',
);
const heads = [
  'spans',
  'first',
  'solve',
  'per span',
  'make ready',
  'state',
  'both ways apart',
];
console.log(heads.map((head) => head.padStart(16)).join(''));
for (const spans of sizes) {
  const beam = continuousBeam(spans);
  const before = process.cpuUsage();
  const outcome = solveBeam(beam);
  const { user, system } = process.cpuUsage(before);
  if (outcome.kind !== 'beam') throw new Error(outcome.unsolved.reason);
  const solver = solverOf(beam);
  const whole = middleTime(() => solveBeam(beam));
  const cells = [
    String(spans),
    ((user + system) / 1000).toFixed(1),
    whole.toFixed(1),
    (whole / spans).toFixed(3),
    middleTime(() => solverOf(beam)).toFixed(1),
    middleTime(() => solver.state('D', beam.loads)).toFixed(1),
    outcome.results[0].agreement.difference.toExponential(1),
  ];
  console.log(cells.map((cell) => cell.padStart(16)).join(''));
}
