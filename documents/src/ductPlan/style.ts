/** Ducts told apart by line and tone, not by colour. mm. */
export const ductStyle = [
  '.room{fill:none;stroke:#777;stroke-width:.2;stroke-dasharray:1.6 .8}.room-name text{fill:#444;font-style:italic;font-size:2.4px}',
  '.wall{fill:none;stroke:#000;stroke-linejoin:miter;stroke-linecap:butt}',
  '.inside{fill:none;stroke:#fff;stroke-linejoin:miter;stroke-linecap:butt}.return .inside{stroke:#ddd}',
  '.middle{fill:none;stroke:#000;stroke-width:.15;stroke-dasharray:1.2 .8}.arrow{fill:#000}',
  '.handler{fill:#fff;stroke:#000;stroke-width:.5}.face{fill:#fff;stroke:#000;stroke-width:.4}',
  '.tag{font-weight:700;text-anchor:middle}.label text{font-size:2.4px}.behind{fill:#fff;fill-opacity:.85}',
].join('');
