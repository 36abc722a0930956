/**
 * The figures. Their scripts are fetched when they come near the window, each a script of its own. A figure stands in
 * `figures/<name>/<name>.ts`; one that works in the background names the script of its worker.
 */
import { adjusterFigure } from './adjuster/adjuster.ts';
import { ballAndSeat } from './ball-and-seat/ball-and-seat.ts';
import { ballInSocket } from './ball-in-socket/ball-in-socket.ts';
import { benchCard } from './bench-card/bench-card.ts';
import { besideBought } from './beside-bought/beside-bought.ts';
import { calibrationFigure } from './calibration/calibration.ts';
import { certificateFigure } from './certificate/certificate.ts';
import { coatedThread } from './coated-thread/coated-thread.ts';
import { designSheet } from './design-sheet/design-sheet.ts';
import { dividedTurn } from './divided-turn/divided-turn.ts';
import { drawerFigure } from './drawer/drawer.ts';
import { driftBars } from './drift-bars/drift-bars.ts';
import { drunkenThread } from './drunken-thread/drunken-thread.ts';
import { faultBench } from './fault-bench/fault-bench.ts';
import { fitSection } from './fit-section/fit-section.ts';
import { flanksUnderLoad } from './flanks-under-load/flanks-under-load.ts';
import { footOnPlane } from './foot-on-plane/foot-on-plane.ts';
import { forceChainFigure } from './force-chain/force-chain.ts';
import { frictionCurve } from './friction-curve/friction-curve.ts';
import { handForceFigure } from './hand-force/hand-force.ts';
import { jackSolid } from './jack-solid/jack-solid.ts';
import type { Figure } from './kit/figure.ts';
import { ladderFigure } from './ladder/ladder.ts';
import { leadErrorFigure } from './lead-error/lead-error.ts';
import { leadsInNut } from './leads-in-nut/leads-in-nut.ts';
import { levellingPlate } from './levelling-plate/levelling-plate.ts';
import { lockErrorFigure } from './lock-error/lock-error.ts';
import { motionPlot } from './motion-plot/motion-plot.ts';
import { otherWays } from './other-ways/other-ways.ts';
import { pairMap } from './pair-map/pair-map.ts';
import { partDrawings } from './part-drawings/part-drawings.ts';
import { partFiles } from './part-files/part-files.ts';
import { passportFigure } from './passport/passport.ts';
import { plateModesFigure } from './plate-modes/plate-modes.ts';
import { plateOnFeet } from './plate-on-feet/plate-on-feet.ts';
import { playBatchFigure } from './play-batch/play-batch.ts';
import { printedParts } from './printed-parts/printed-parts.ts';
import { printedSpring } from './printed-spring/printed-spring.ts';
import { pushedJack } from './pushed-jack/pushed-jack.ts';
import { ramp } from './ramp/ramp.ts';
import { reversalLoop } from './reversal-loop/reversal-loop.ts';
import { roundingCost } from './rounding-cost/rounding-cost.ts';
import { section } from './section/section.ts';
import { settlingLog } from './settling-log/settling-log.ts';
import { solidFigure } from './solid/solid.ts';
import { springDays } from './spring-days/spring-days.ts';
import { threadEatenFigure } from './thread-eaten/thread-eaten.ts';
import { threadLimits } from './thread-limits/thread-limits.ts';
import { torqueBars } from './torque-bars/torque-bars.ts';
import { veeCoupling } from './vee-coupling/vee-coupling.ts';
import { wavesInNut } from './waves-in-nut/waves-in-nut.ts';
import { whichPartFigure } from './which-part/which-part.ts';

export const LAZY: readonly Figure[] = [
  ramp,
  section,
  solidFigure,
  adjusterFigure,
  dividedTurn,
  threadEatenFigure,
  motionPlot,
  pairMap,
  roundingCost,
  leadErrorFigure,
  drunkenThread,
  torqueBars,
  frictionCurve,
  handForceFigure,
  reversalLoop,
  pushedJack,
  jackSolid,
  whichPartFigure,
  playBatchFigure,
  levellingPlate,
  plateOnFeet,
  veeCoupling,
  forceChainFigure,
  plateModesFigure,
  settlingLog,
  springDays,
  lockErrorFigure,
  otherWays,
  calibrationFigure,
  faultBench,
  certificateFigure,
  designSheet,
  ballAndSeat,
  driftBars,
  threadLimits,
  flanksUnderLoad,
  fitSection,
  drawerFigure,
  benchCard,
  printedSpring,
  partFiles,
  besideBought,
  ladderFigure,
  printedParts,
  ballInSocket,
  footOnPlane,
  partDrawings,
  passportFigure,
  coatedThread,
  leadsInNut,
  wavesInNut,
];
