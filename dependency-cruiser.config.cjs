/** Dependencies point one way; see ARCHITECTURE.md. Each rule says what a folder must not know. */
const no = (name, from, to, comment) => ({
  name,
  severity: 'error',
  comment,
  from: { path: from, pathNot: '\\.test\\.tsx?$' },
  to: { path: to },
});
const trades = 'climate|loads|equipment|air|circuit|offgrid';
module.exports = {
  forbidden: [
    {
      name: 'no-circular',
      severity: 'error',
      comment:
        'Nothing hangs on itself, types neither. A form of groups within groups draws itself: the one exception.',
      from: { pathNot: '^app/src/form/' },
      to: { circular: true },
    },
    no(
      'quantity-knows-nothing',
      '^project/src/quantity',
      '^project/src/(?!quantity|schema/entered)',
      'Quantities stand alone.',
    ),
    no(
      'project-knows-no-physics',
      '^project/',
      '^(engine|documents|app|server|cli|demos)/',
      'The document is used without the physics.',
    ),
    no(
      'physics-knows-no-project',
      '^engine/src/physics',
      '^(project/|engine/src/(?!physics))',
      'Physics knows nothing of projects.',
    ),
    no(
      'engine-knows-no-host',
      '^engine/',
      '^(documents|app|server|cli|demos|validation|bench)/',
      'The engine is pure.',
    ),
    no(
      'server-needs-no-physics',
      '^server/',
      '^(engine|documents|app)/',
      'The server keeps and serves; it computes nothing.',
    ),
    {
      name: 'trades-share-only-types',
      severity: 'error',
      comment: 'Results come as arguments; what needs two trades lives in coupling/.',
      from: { path: `^engine/src/(${trades})/`, pathNot: '\\.test\\.ts$' },
      to: { path: `^engine/src/(${trades})/`, pathNot: '^engine/src/$1/', dependencyTypesNot: ['type-only'] },
    },
    no(
      'only-faces',
      '^(cli|app|documents|bench|demos|server)/',
      '^(engine|project)/src/(?!(index|plan)\\.ts$|quantity/index\\.ts$|physics/index\\.ts$)',
      'Other packages use public faces.',
    ),
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    exclude: { path: '(^|/)dist/' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.base.json' },
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['import', 'default'],
      extensions: ['.ts', '.tsx', '.mjs', '.js', '.json'],
    },
  },
};
