import { readFileSync } from 'node:fs';
import { openProject, applyEdit } from '@kneewall/project';
import { evaluate, coldMemo } from './src/index.ts';
const o = openProject(readFileSync(process.argv[2] ?? '/work/main/demos/tern-ledge.json','utf8'));
if (!o.ok) { console.log(o.problems.slice(0,10)); process.exit(1); }
console.log(o.problems);
const memo = coldMemo();
let t=performance.now();
const { plan } = evaluate(o.project, {}, {memo});
console.log('ms', performance.now()-t);
for (let i=0;i<5;i++){t=performance.now(); evaluate(o.project, {}, {memo: coldMemo()}); console.log('cold warm ms', performance.now()-t);}
t=performance.now(); evaluate(o.project, {}, {memo}); console.log('same ms', performance.now()-t);
for (const f of plan.findings) console.log(f.status.padEnd(8), f.holdPoint.padEnd(7), f.id.padEnd(36), JSON.stringify(f.value), '|', f.what, '|', f.mend);
console.log(plan.agreement.converged, plan.agreement.sweeps, plan.agreement.residual, JSON.stringify(plan.agreement.heating).slice(0,500));
