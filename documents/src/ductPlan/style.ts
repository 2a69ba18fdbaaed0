/** Black on white, told apart by line and hatch: it has to survive a copy of a copy. mm. */
export const sheetStyle = [
  'text{font-family:"DejaVu Sans",Arial,Helvetica,sans-serif;font-size:2.6px;fill:#000}',
  '.title{font-size:5px;font-weight:700}.small{font-size:2.4px}.head text{font-weight:700}.caution{font-weight:700}',
  '.frame,.hollow{fill:none;stroke:#000;stroke-width:.35}.full{fill:#000}.hollow{fill:#fff}',
  '.rule{stroke:#000;stroke-width:.12}.bar{stroke:#000;stroke-width:.4}.tick{stroke:#000;stroke-width:.25}',
  '.room{fill:none;stroke:#777;stroke-width:.2;stroke-dasharray:1.6 .8}.room-name text{fill:#444;font-style:italic;font-size:2.4px}',
  '.wall{fill:none;stroke:#000;stroke-linejoin:miter;stroke-linecap:butt}',
  '.inside{fill:none;stroke:#fff;stroke-linejoin:miter;stroke-linecap:butt}.return .inside{stroke:#ddd}',
  '.middle{fill:none;stroke:#000;stroke-width:.15;stroke-dasharray:1.2 .8}.arrow{fill:#000}',
  '.handler{fill:#fff;stroke:#000;stroke-width:.5}.face{fill:#fff;stroke:#000;stroke-width:.4}',
  '.tag{font-weight:700;text-anchor:middle}.label text{font-size:2.4px}.behind{fill:#fff;fill-opacity:.85}',
].join('');
