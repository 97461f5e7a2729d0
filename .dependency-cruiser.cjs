// The import rule of the project: engine <- model <- kitchen, io <- workers, view, ui, cli <- app.
// tests/architecture.test.ts proves that each rule fires.
const layers = {
  engine: [],
  model: ['engine'],
  kitchen: ['engine', 'model'],
  io: ['engine', 'model'],
  workers: ['engine', 'model', 'kitchen', 'io'],
  view: ['engine', 'model', 'kitchen', 'io'],
  ui: ['engine', 'model', 'kitchen', 'io'],
  cli: ['engine', 'model', 'kitchen', 'io'],
  app: ['engine', 'model', 'kitchen', 'io', 'workers', 'view', 'ui'],
};

const forbidden = Object.entries(layers).map(([layer, allowed]) => ({
  name: `layer-${layer}`,
  comment: `${layer} may import only itself${allowed.length ? ` and ${allowed.join(', ')}` : ''}.`,
  severity: 'error',
  from: { path: `^src/${layer}/` },
  to: { path: '^src/', pathNot: `^src/(${[layer, ...allowed].join('|')})/` },
}));

forbidden.push(
  {
    name: 'engine-is-pure',
    comment: 'The engine uses culori/fn, munsell and its own data, nothing else.',
    severity: 'error',
    from: { path: '^src/engine/', pathNot: '\\.test\\.ts$' },
    to: { path: '.', pathNot: '^src/engine/|(^|/)node_modules/(culori|munsell|@types/culori)/' },
  },
  {
    name: 'three-only-in-view',
    comment: 'The view is the only place that imports three.',
    severity: 'error',
    from: { path: '^src/', pathNot: '^src/view/' },
    to: { path: 'node_modules/(three|@react-three|@types/three)/' },
  },
  { name: 'no-circular', comment: 'No import cycles.', severity: 'error', from: {}, to: { circular: true } },
);

module.exports = {
  forbidden,
  options: {
    doNotFollow: { path: 'node_modules' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    enhancedResolveOptions: { exportsFields: ['exports'], conditionNames: ['import', 'node', 'default', 'types'] },
  },
};
