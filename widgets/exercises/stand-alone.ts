/** A still picture as a file of its own: black on white, with the few rules that the page’s styles would give it. */
const STYLE =
  'path,circle{fill:none;stroke:#000;stroke-width:1}circle.rim{stroke-width:2}.hub{fill:#000}.hand{stroke-width:2}text{font:13px sans-serif;fill:#000;stroke:none}.dial text{text-anchor:middle}.dial .count{font-size:8px}.rule .mark{stroke-width:2}';

export const standAlone = (svg: string): string =>
  svg
    .replace(/^<svg\b/, '<svg xmlns="http://www.w3.org/2000/svg"')
    .replace(/>/, `><style>${STYLE}</style><rect width="100%" height="100%" fill="#fff"/>`);
