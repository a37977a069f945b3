/** Which part of the house may know which. The arrows never run back. */
const doors = '^main/(shell|host|cli)/'

module.exports = {
  forbidden: [
    { name: 'no-circle', severity: 'error', from: {}, to: { circular: true, viaOnly: { dependencyTypesNot: ['type-only'] } } },
    { name: 'shared-logic-is-pure', severity: 'error', from: { path: '^shared-logic/' }, to: { pathNot: ['^shared-logic/', '^node_modules/(zod|date-fns)/'] } },
    { name: 'renderer-knows-no-main', severity: 'error', from: { path: '^renderer/' }, to: { path: ['^main/', '^node_modules/(electron|better-sqlite3|kysely|sharp|pdfkit|exifreader)/'] } },
    { name: 'renderer-knows-no-node', severity: 'error', from: { path: '^renderer/' }, to: { dependencyTypes: ['core'] } },
    { name: 'main-knows-no-renderer', severity: 'error', from: { path: '^main/' }, to: { path: '^renderer/' } },
    { name: 'electron-in-shell-and-preload-only', severity: 'error', from: { path: '^main/', pathNot: '^main/(shell/|preload\\.ts$)' }, to: { path: '^node_modules/electron/' } },
    { name: 'nothing-knows-its-doors', severity: 'error', from: { path: '^main/', pathNot: doors }, to: { path: doors } },
    { name: 'doors-meet-at-the-desk', severity: 'error', from: { path: '^main/(shell|host|cli)/' }, to: { path: doors, pathNot: '^main/$1/' } },
    { name: 'a-phones-door-opens-from-a-door', severity: 'error', from: { path: '^main/', pathNot: '^main/(shell|host|phone)/' }, to: { path: '^main/phone/' } },
    { name: 'a-phones-door-leads-to-the-desk-alone', severity: 'error', from: { path: '^main/phone/' }, to: { path: '^main/', pathNot: '^main/(phone|desk|serving)/' } },
    { name: 'store-photos-and-report-know-no-desk', severity: 'error', from: { path: '^main/(store|photos|report)/' }, to: { path: '^main/(desk|example|serving)/' } },
    { name: 'contract-is-the-renderers-only-way', severity: 'error', from: { path: '^renderer/' }, to: { pathNot: ['^renderer/', '^shared-logic/', '^node_modules/'] } },
    { name: 'program-knows-no-tests', severity: 'error', from: { path: '^(main|renderer|shared-logic)/' }, to: { path: '^tests/' } },
    { name: 'resolves', severity: 'error', from: { path: '^(main|renderer|shared-logic)/' }, to: { couldNotResolve: true, pathNot: '\\?|\\.(css|woff2?)$' } },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    parser: 'swc',
    enhancedResolveOptions: { extensions: ['.ts', '.tsx', '.js', '.mjs', '.cjs', '.json'], exportsFields: ['exports'], conditionNames: ['import', 'require', 'node', 'default', 'types'] },
  },
}
