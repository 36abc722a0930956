/** The plots, a script of its own that a page fetches when the first of them comes into view. */
import { motionPlot } from '../motion-plot/motion-plot.ts';
import type { Widget } from '../shared/widget.ts';

export const PLOTTED: readonly Widget[] = [motionPlot];

declare global {
  interface Window {
    notebookPlots?: readonly Widget[];
  }
}

if (typeof window !== 'undefined') window.notebookPlots = PLOTTED;
