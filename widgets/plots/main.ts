/**
 * The plots, a script of its own that a page fetches when the first of them comes into view. Run inside a worker it draws
 * batches instead.
 */
import { ballAndSeat } from '../ball-and-seat/ball-and-seat.ts';
import { designSheet } from '../design-sheet/design-sheet.ts';
import { driftBars } from '../drift-bars/drift-bars.ts';
import { drunkenThread } from '../drunken-thread/drunken-thread.ts';
import { good } from '../engine/index.ts';
import { forceChainFigure } from '../force-chain/force-chain.ts';
import { frictionCurve } from '../friction-curve/friction-curve.ts';
import { handForceFigure } from '../hand-force/hand-force.ts';
import { leadErrorFigure } from '../lead-error/lead-error.ts';
import { levellingPlate } from '../levelling-plate/levelling-plate.ts';
import { lockErrorFigure } from '../lock-error/lock-error.ts';
import { motionPlot } from '../motion-plot/motion-plot.ts';
import { pairMap } from '../pair-map/pair-map.ts';
import { playBatchFigure } from '../play-batch/play-batch.ts';
import { insideWorker, lendWorkerScript, serveBatches } from '../play-batch/run-batch.ts';
import { reversalLoop } from '../reversal-loop/reversal-loop.ts';
import { roundingCost } from '../rounding-cost/rounding-cost.ts';
import type { Widget } from '../shared/widget.ts';
import { springDays } from '../spring-days/spring-days.ts';
import { torqueBars } from '../torque-bars/torque-bars.ts';
import { veeCoupling } from '../vee-coupling/vee-coupling.ts';

/** Plot names each group of its marks, where no role allows a name; the figure's own title and sentence say it better. */
const unnamedGroups = (widget: Widget): Widget => ({
  ...widget,
  draw: (numbers, view) => {
    const drawn = widget.draw(numbers, view);
    return drawn.ok
      ? good(
          drawn.value.replace(/<g\b[^>]*>/g, (tag) =>
            tag.includes(' role=') ? tag : tag.replace(/ aria-label="[^"]*"/, ''),
          ),
        )
      : drawn;
  },
});

export const PLOTTED: readonly Widget[] = [
  motionPlot,
  pairMap,
  roundingCost,
  leadErrorFigure,
  drunkenThread,
  torqueBars,
  frictionCurve,
  handForceFigure,
  reversalLoop,
  playBatchFigure,
  levellingPlate,
  veeCoupling,
  forceChainFigure,
  springDays,
  lockErrorFigure,
  designSheet,
  ballAndSeat,
  driftBars,
].map(unnamedGroups);

declare global {
  interface Window {
    notebookPlots?: readonly Widget[];
  }
}

if (typeof window !== 'undefined') {
  window.notebookPlots = PLOTTED;
  // Known only while the script runs for the first time.
  const here = import.meta.env.DEV ? import.meta.url : (document.currentScript as HTMLScriptElement | null)?.src;
  lendWorkerScript(here ?? '');
} else if (insideWorker()) serveBatches();
