/** The arrows of the house: app → lib → db → shared, and the doors of each lib folder. */
const doors = '(index|store|engine)\\.ts$';
/** @type {import('dependency-cruiser').IConfiguration} */
module.exports = {
  forbidden: [
    {
      name: 'no-circles',
      severity: 'error',
      from: {},
      to: { circular: true, dependencyTypesNot: ['type-only'] },
    },
    {
      name: 'shared-stands-alone',
      severity: 'error',
      from: { path: '^shared/' },
      to: { path: '^(app|lib|db)/|^server\\.ts' },
    },
    {
      name: 'db-knows-shared-only',
      severity: 'error',
      from: { path: '^db/' },
      to: { path: '^(app|lib)/|^server\\.ts' },
    },
    {
      name: 'lib-knows-no-pages',
      severity: 'error',
      from: { path: '^lib/' },
      to: { path: '^app/|^server\\.ts|node_modules/(next|react|react-dom)/' },
    },
    {
      name: 'through-the-door',
      comment:
        'One subject imports what another offers: index.ts (pure), store.ts (queries) or engine.ts (native, worker only).',
      severity: 'error',
      from: { path: '^lib/([^/]+)/' },
      to: { path: '^lib/([^/]+)/', pathNot: ['^lib/$1/', `^lib/[^/]+/${doors}`] },
    },
    {
      name: 'pages-use-the-doors',
      severity: 'error',
      from: { path: '^(app/|server\\.ts)' },
      to: { path: '^lib/[^/]+/', pathNot: [`^lib/[^/]+/${doors}`] },
    },
    {
      name: 'thinking-is-pure',
      comment: 'Only store, engine and the task machinery touch the database or the disk.',
      severity: 'error',
      from: { path: '^lib/', pathNot: '^lib/[^/]+/(.*store.*|engine.*)|^lib/tasks/' },
      to: { path: '^db/|^lib/[^/]+/(store|engine)|node_modules/(node-av|better-sqlite3|drizzle-orm)/' },
    },
    {
      name: 'native-engine-in-the-worker',
      severity: 'error',
      from: { pathNot: '^lib/[^/]+/engine|^lib/tasks/worker' },
      to: { path: '^lib/[^/]+/engine|node_modules/node-av/' },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    tsConfig: { fileName: 'tsconfig.json' },
    tsPreCompilationDeps: true,
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['import', 'require', 'node', 'default', 'types'],
    },
  },
};
